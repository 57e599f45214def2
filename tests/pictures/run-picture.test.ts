import { describe, expect, test } from 'vitest';
import { pictureText, runPicture, type Shape } from '../../src/report/pictures/index.ts';
import { setCells, type Cells } from '../../src/schedule/index.ts';
import { closeTo } from '../support/close-to.ts';
import { nodalVoltages } from '../support/nodal-solver.ts';
import { idAt, scheduleOf } from '../support/schedules.ts';
import { elements, measure, ruler, textIn, withClass } from './read-picture.ts';
import { makeWords } from '../../src/words/index.ts';

const TYPES: Cells[] = [
  { type: 'lamp', power: 12, load: 'power', minVoltage: 21.6 }, { type: 'sensor', draw: 150, minVoltage: 20.4 },
  { type: 'plain', draw: 50 },
];
/** At 20 °C, at which the resistance of the conductor is given. */
const RUN: Cells = { run: 'W1', rail: 'A', conductor: 'C', length: 55, temperature: 20 };

function drawn(devices: readonly Cells[], run: Cells = {}, locale = 'en') {
  const schedule = scheduleOf({
    types: TYPES, supplies: [{ rail: 'A', rated: 20 }], conductors: [{ conductor: 'C', resistance: 12.1 }],
    runs: [{ ...RUN, ...run }], devices: devices.map((cells) => ({ qty: 1, rail: 'A', run: 'W1', ...cells })),
  });
  schedule.speak(makeWords(locale));
  return { schedule, picture: runPicture(schedule, idAt(schedule, 'runs')) };
}

/** Distance and voltage of every device, read off the picture with a ruler. */
function readOff(picture: Shape): [metres: number, volts: number][] {
  const [metres, volts] = [ruler(withClass(picture, 'metres'), 'x'), ruler(withClass(picture, 'volts'), 'y')];
  return withClass(picture, 'place').flatMap((place) => elements(place).filter(({ tag }) => tag === 'circle'))
    .map((circle) => [metres(measure(circle, 'cx')), volts(measure(circle, 'cy'))]);
}

/** Places are written to a hundredth of a unit. */
const RULER = { absolute: 0.002, relative: 0 };

describe('measured with a ruler', () => {
  const devices: Cells[] = [
    { ref: 'D1', type: 'lamp', distance: 12 }, { ref: 'D2', type: 'sensor', qty: 4, distance: 31.5 },
    { ref: 'D3', type: 'lamp', qty: 2, distance: 44 }, { ref: 'D4', type: 'plain' },
  ];
  const { picture } = drawn(devices);

  test('each device is at its distance and voltage, by nodal analysis', () => {
    const taps = [
      { distanceMetres: 12, watts: 12 }, { distanceMetres: 31.5, amps: 0.6 }, { distanceMetres: 44, watts: 24 },
      { distanceMetres: 55, amps: 0.05 },
    ];
    const volts = nodalVoltages(24, 2 * 12.1 / 1000, taps)!;
    expect(readOff(picture)).toEqual(taps.map(({ distanceMetres }, tap) =>
      [closeTo(distanceMetres, { absolute: 0.01, relative: 0 }), closeTo(volts[tap]!, RULER)]));
  });

  test('the marks of least voltages are at what the types say, and the line of the most drop at 95 % of 24 V', () => {
    const volts = ruler(withClass(picture, 'volts'), 'y');
    const crossbars = [...withClass(picture, 'least'), ...withClass(picture, 'lacking')]
      .filter(({ attributes }) => attributes.y1 === attributes.y2);
    // One sign of each kind stands in the legend, below the axis.
    const lowest = Number(textIn(withClass(picture, 'volts')[0]!));
    const inPlot = crossbars.map((bar) => volts(measure(bar, 'y1'))).filter((value) => value > lowest);
    expect(inPlot.sort()).toEqual([20.4, 21.6, 21.6].map((value) => closeTo(value, RULER)));
    expect(volts(measure(withClass(picture, 'limit')[0]!, 'y1'))).toEqual(closeTo(22.8, RULER));
  });

  test('the curve begins at the supply, passes every device and stays level behind the last', () => {
    const early = drawn([{ type: 'sensor', qty: 10, distance: 20 }]).picture;
    const [metres, volts] = [ruler(withClass(early, 'metres'), 'x'), ruler(withClass(early, 'volts'), 'y')];
    const nodes = withClass(early, 'curve')[0]!.attributes.d!.split(/[ML]/)
      .slice(1).map((point) => point.split(' ').map(Number))
      .map(([x, y]) => [metres(x!), volts(y!)]);
    // 1.5 A over 20 m of 0.0242 Ω/m, by hand: 0.726 V.
    expect(nodes.flat()).toEqual([
      0, 24, 20, 23.274, 55, 23.274,
    ].map((value) => closeTo(value, { absolute: 0.01, relative: 0 })));
  });

  test('the scale that it states is that of the paper: 180 mm wide, 4 units to the millimetre', () => {
    expect([picture.attributes.width, picture.attributes.viewBox!.split(' ')[2]]).toEqual(['180mm', '720']);
    const note = elements(picture).map((shape) => shape.tag === 'text' ? textIn(shape) : '')
      .find((text) => text.startsWith('On paper'))!;
    const [, across, up] =
      /10 mm are ([\d.]+)\sm across and ([\d.]+)\sV up/.exec(note)!.map(Number) as [number, number, number];
    const [metres, volts] = [ruler(withClass(picture, 'metres'), 'x'), ruler(withClass(picture, 'volts'), 'y')];
    expect(metres(140) - metres(100)).toEqual(closeTo(across, { absolute: 0.01, relative: 0 }));
    expect(volts(100) - volts(140)).toEqual(closeTo(up, RULER));
  });
});

describe('what a run lacks is marked', () => {
  test('a device with too little voltage, in its name, its stem and its words', () => {
    const { picture } = drawn([{ ref: 'Far', type: 'lamp', qty: 4 }, { ref: 'Near', type: 'lamp', distance: 1 }]);
    const names = elements(picture)
      .filter(({ attributes }) => attributes.class?.includes('over') && !attributes.class.includes('mark'));
    expect(names.map(textIn)).toContain('Far');
    expect(names.map(textIn)).not.toContain('Near');
    expect(textIn(picture)).toMatch(/Far: [\d.]+\sV at 55\.0\sm, needed 21\.60\sV, too little/);
  });

  test('a run without a working voltage says so, and has no curve and no voltages', () => {
    const { picture } = drawn([{ type: 'lamp', qty: 40 }]);
    expect(withClass(picture, 'curve')).toEqual([]);
    expect(readOff(picture)).toEqual([]);
    expect(textIn(picture)).toContain('It has no stable operating point.');
    expect(textIn(picture)).toContain('No stable operating point: the devices draw');
  });

  test.each<{ why: string; run: Cells }>([
    { why: 'a length', run: { length: null } }, { why: 'a rail', run: { rail: 'nowhere' } },
    { why: 'a conductor', run: { conductor: null } },
  ])('a run without $why says that its voltage is not known', ({ run }) => {
    const { picture } = drawn([{ type: 'lamp' }], run);
    expect(withClass(picture, 'curve')).toEqual([]);
    expect(textIn(picture)).toContain('The voltage along this run is not known yet.');
  });

  test('a device whose current is not known is named, and the figures are partial', () => {
    const { picture } = drawn([{ ref: 'D1', type: 'lamp' }, { ref: 'D2', type: 'lamp', qty: null, distance: 30 }]);
    expect(textIn(picture)).toContain('D2: not known at 30.0\u00a0m');
    expect(textIn(picture)).toMatch(/lowest voltage is ≤\s/);
  });
});

describe('from one device to two hundred', () => {
  test.each([0, 1, 2, 31, 33, 34, 60, 200])('%d devices: names stay apart and within the picture', (count) => {
    const devices = Array.from({ length: count }, (_, index) =>
      ({ ref: `A rather long tag of device ${index}`, type: 'plain', distance: (index * 37) % 54 + index / 1000 }));
    const { picture } = drawn(devices);
    const names = elements(picture)
      .filter(({ tag, attributes }) => tag === 'g' && attributes.transform?.startsWith('rotate(-45'));
    const places = names.map((name) => Number(/rotate\(-45 ([\d.]+)/.exec(name.attributes.transform!)![1]));
    expect(names).toHaveLength(Math.min(count, places.length));
    for (let index = 1; index < places.length; index += 1) {
      // Slanted by 45°, lines of 12 units are clear of each other from 12 ÷ sin 45° on.
      expect(places[index]! - places[index - 1]!).toBeGreaterThan(12 / Math.SQRT1_2);
    }
    // 13 signs of at most 8 units, slanted, end within the width.
    for (const place of places) expect(place + 13 * 8 * Math.SQRT1_2).toBeLessThan(720);
    expect(names.every((name) => textIn(name).length <= 13)).toBe(true);
    expect(readOff(picture)).toHaveLength(count);
    const rest = count - names.length;
    if (rest === 1) expect(textIn(picture)).toContain('1 more place is drawn without its name.');
    if (rest > 1) expect(textIn(picture)).toContain(`${rest} more places are drawn without their names.`);
    for (const { ref } of devices) expect(textIn(picture)).toContain(ref);
  });

  test('devices at one place share a mark and a name', () => {
    const { picture } =
      drawn([{ ref: 'D1', type: 'lamp' }, { ref: 'D2', type: 'sensor' }, { ref: 'D3', type: 'plain' }]);
    expect(readOff(picture)).toHaveLength(1);
    expect(elements(picture).map(textIn)).toContain('D1 +2');
    expect(textIn(picture)).toContain('D1, D2, D3: ');
  });
});

test('a picture is pure: it follows the schedule, and the same schedule gives the same', () => {
  const { schedule, picture } = drawn([{ ref: 'D1', type: 'lamp' }]);
  const id = idAt(schedule, 'runs');
  expect(runPicture(schedule, id)).toEqual(picture);
  schedule.act('Longer', setCells(schedule.document, [{ sheet: 'runs', id, key: 'length', value: 110 }]));
  expect(runPicture(schedule, id)).not.toEqual(picture);
  schedule.undo();
  expect(runPicture(schedule, id)).toEqual(picture);
});

test('as text: names are escaped, nothing has styles or ids of its own, a file of its own brings its styles', () => {
  const { picture } = drawn([{ ref: '<b>&"\'\u0007', type: 'lamp' }], { run: 'W1' });
  const text = pictureText(picture);
  expect(text).toContain('&lt;b&gt;&amp;&quot;&#39;\ufffd');
  expect(text).not.toMatch(/ style=| id=|<b>/);
  expect(text).not.toContain('<style>');
  const file = pictureText(picture, { standalone: true });
  expect(file).toMatch(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
  expect(file).toContain('<style>');
  expect(file.indexOf('<title>')).toBeLessThan(file.indexOf('<style>'));
});

test('figures are written as the language has them', () => {
  const { picture } = drawn([{ ref: 'D1', type: 'lamp' }], {}, 'de');
  expect(textIn(picture)).toMatch(/23,\d\d\sV/);
  expect(textIn(picture)).not.toMatch(/23\.\d/);
});
