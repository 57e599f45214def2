import '../../../components/pictures/schedule-picture.define.ts';
import type { PictureKind, SchedulePicture } from '../../../components/pictures/schedule-picture.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import type { Content } from '../../../src/schedule/index.ts';

/** A run of which the far end has too little voltage: 60 m of 24.2 mΩ/m with 3 A at the end lose 4.36 V, by hand. */
const content = (): Content => ({
  details: {},
  sheets: {
    types: [{ type: 'lamp', draw: 500, nodes: 1, minVoltage: 20.4 }],
    supplies: [{ rail: 'A', rated: 10 }], conductors: [{ conductor: 'C', resistance: 12.1 }],
    runs: [{ run: 'W/1', rail: 'A', conductor: 'C', length: 60, temperature: 20 }],
    branches: [{ branch: 'B', limit: 50 }],
    devices: Array.from({ length: 12 }, (_, index) =>
      (
        {
          ref: `Lamp ${index} in hall`, type: 'lamp', rail: 'A', run: 'W/1', qty: index === 11 ? 6 : 0,
          distance: 5 * (index + 1),
        }
      )),
  },
});

/** Puts a picture of the content on the page. `removePictures` takes it away. */
export async function mount(kind: PictureKind): Promise<{ element: SchedulePicture; schedule: LoadSchedule }> {
  const schedule = new LoadSchedule(content());
  const element = document.createElement('elv-picture');
  element.schedule = schedule;
  element.kind = kind;
  element.run = schedule.rows('runs')[0]!.id;
  document.body.append(element);
  await element.updateComplete;
  return { element, schedule };
}

export function removePictures(): void {
  for (const element of document.querySelectorAll('elv-picture')) element.remove();
}

export const svgOf = (element: SchedulePicture) => element.renderRoot.querySelector<SVGSVGElement>('svg.picture')!;
