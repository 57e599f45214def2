const STOREYS = 4;
const ROOMS = 62;
const DOWNLIGHTS = ['Downlight 7 W', 'downlight 7W', '"DOWNLIGHT, 7 W"'];
const STATIONS = ['"Push-button station, 2 keys"', 'push-button 2-gang', 'Push button station (2 keys)'];

/** A takeoff of an invented hotel: 2,000 lines, in which each storey has a title and a subtotal. */
export function hotelTakeoff(): string {
  const storeys = Array.from({ length: STOREYS }, (_, index) => storeyLines(index + 1)).flat();
  const lines = ['Harbour Hotel: rooms,,', ',,', 'Device,Room,No.', ...storeys, 'TOTAL,,"3,720"'];
  return `${lines.join('\r\n')}\r\n`;
}

/** 1 + 62 × 8 + 1 + 1 = 499 lines with 31 × 14 + 31 × 16 = 930 devices. */
function storeyLines(storey: number): string[] {
  const rooms = Array.from({ length: ROOMS }, (_, index) => roomLines(index + 1, String(storey * 100 + index + 1)));
  return [`Storey ${storey},,`, ...rooms.flat(), `Subtotal storey ${storey},,930`, ',,'];
}

/** 14 devices in rooms with an odd number, 16 in the others; the light of the bath is counted apart. */
function roomLines(number: number, room: string): string[] {
  return [
    `${DOWNLIGHTS[number % 3]},Room ${room},${number % 2 === 1 ? 4 : 6}`,
    `Step light,Room ${room},2 no.`,
    `${STATIONS[number % 3]},Room ${room},2.0`,
    `Room thermostat,Room ${room},1`,
    `Window contact,Room ${room},1`,
    `Card reader,Room ${room},1`,
    `"Valve actuator, thermal",Room ${room},2`,
    `Downlight 7 W,Room ${room},1`,
  ];
}
