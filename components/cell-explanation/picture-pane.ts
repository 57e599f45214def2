import { html, type TemplateResult } from 'lit';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { PictureKind } from '../pictures/schedule-picture.ts';
import type { Place } from '../look/index.ts';
import { runOf } from './run-words.ts';

/** Which picture goes with the selected cell; the pane stays where there is none, so that nothing jumps. */
function pictureOf(schedule: LoadSchedule, place: Place | undefined): { kind: PictureKind; run: number } | undefined {
  if (place === undefined) return undefined;
  const { sheet, key } = place;
  if (sheet === 'supplies' || (sheet === 'devices' && key === 'rail')) return { kind: 'supplies', run: -1 };
  if (sheet === 'branches' || (sheet === 'devices' && key === 'branch')) return { kind: 'branches', run: -1 };
  const run = runOf(schedule, place);
  return run < 0 ? undefined : { kind: 'run', run };
}

/** The picture that goes with the selected cell, or what to select for one. */
export function picturePane(schedule: LoadSchedule, place: Place | undefined): TemplateResult {
  const { words } = schedule;
  const shown = pictureOf(schedule, place);
  return html`<div class="pane">${shown === undefined
    ? html`<p class="quiet">${words.say('Select a run, or a device on one, to see the voltage along it; a supply or a branch, to see how full each is.')}</p>`
    : html`<elv-picture .schedule=${schedule} .kind=${shown.kind} .run=${shown.run} .words=${words}></elv-picture>`}</div>`;
}
