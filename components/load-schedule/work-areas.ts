import { html, nothing, type ReactiveControllerHost, type TemplateResult } from 'lit';
import type { RememberedColumns } from '../../src/exchange/takeoff/index.ts';
import type { PanelChoice } from '../../src/engine/panel-of.ts';
import type { LoadSchedule } from '../../src/load-schedule.ts';
import type { AskedJob } from '../rework/rework.ts';
import type { WorkCommand } from '../schedule-toolbar/commands.ts';
import type { Trial } from '../variants/trial.ts';
import type { Words } from '../../src/words/index.ts';

/** Where each area comes from; it is fetched when it is first asked for. */
type WorkName = WorkCommand | 'rework';
const SOURCES: Readonly<Record<WorkName, () => Promise<unknown>>> = {
  join: () => import('../schedule-join/schedule-join.define.ts'),
  takeoff: () => import('../takeoff-reader/takeoff-reader.define.ts'),
  shareOut: () => import('../share-out/share-out.define.ts'),
  sizing: () => import('../sizing-table/sizing-table.define.ts'),
  cases: () => import('../case-area/case-area.define.ts'),
  variants: () => import('../variants/variants.define.ts'),
  wiring: () => import('../wiring/wiring.define.ts'),
  bill: () => import('../bill-table/bill-table.define.ts'),
  measure: () => import('../measured-values/measured-values.define.ts'),
  loadTable: () => import('../load-table/load-table.define.ts'),
  rework: () => import('../rework/rework.define.ts'),
};

/** What the areas are given. */
export interface WorkContext {
  readonly schedule: LoadSchedule;
  /** What is tried out in its place. */
  readonly trial: Trial | undefined;
  readonly revision: number;
  readonly readonly: boolean;
  readonly words: Words;
  readonly takeoffColumns: RememberedColumns;
  /** The panel that is looked at. */
  readonly panel: PanelChoice;
}

/** The work areas of an element: those that were opened keep where they were, and at most one is shown. */
export class WorkAreas {
  /** The one that is shown. */
  active: WorkName | undefined;
  readonly #host: ReactiveControllerHost;
  readonly #failed: () => void;
  readonly #opened = new Set<WorkName>();
  /** What the area of jobs was opened for. */
  #asked: AskedJob | undefined;

  /** @param failed told when an area cannot be fetched. */
  constructor(host: ReactiveControllerHost, failed: () => void) {
    this.#host = host;
    this.#failed = failed;
  }

  /** @param asked the job, where it is the area of jobs. */
  async open(name: WorkName, asked?: AskedJob): Promise<void> {
    try {
      await SOURCES[name]();
    } catch (error) {
      this.#failed();
      reportError(error);
      return;
    }
    this.#opened.add(name);
    this.#asked = asked ?? this.#asked;
    this.active = name;
    this.#host.requestUpdate();
  }

  close(): void {
    if (this.active === undefined) return;
    this.active = undefined;
    this.#host.requestUpdate();
  }

  render({ schedule, trial, revision, readonly, words, takeoffColumns, panel }: WorkContext): TemplateResult {
    const shown = (name: WorkName) => name === this.active;
    const tried = trial?.schedule ?? schedule;
    return html`
      ${this.#opened.has('join') ? html`<elv-schedule-join class="work" ?hidden=${!shown('join')} .active=${shown('join')}
        .schedule=${schedule} .revision=${revision} .words=${words}></elv-schedule-join>` : nothing}
      ${this.#opened.has('takeoff') ? html`<elv-takeoff-reader class="work" ?hidden=${!shown('takeoff')} .active=${shown('takeoff')}
        .schedule=${schedule} .revision=${revision} .words=${words} .pageColumns=${takeoffColumns}></elv-takeoff-reader>` : nothing}
      ${this.#opened.has('shareOut') ? html`<elv-share-out class="work" ?hidden=${!shown('shareOut')} .active=${shown('shareOut')}
        .schedule=${tried} .revision=${revision} .words=${words}></elv-share-out>` : nothing}
      ${this.#opened.has('sizing') ? html`<elv-sizing-table class="work" ?hidden=${!shown('sizing')} .active=${shown('sizing')}
        .schedule=${tried} .revision=${revision} .words=${words} ?readonly=${readonly}></elv-sizing-table>` : nothing}
      ${this.#opened.has('cases') ? html`<elv-case-area class="work" ?hidden=${!shown('cases')} .active=${shown('cases')}
        .schedule=${tried} .revision=${revision} .words=${words} ?readonly=${readonly} .only=${panel}></elv-case-area>` : nothing}
      ${this.#opened.has('variants') ? html`<elv-variants class="work" ?hidden=${!shown('variants')} .active=${shown('variants')}
        .schedule=${schedule} .trial=${trial} .revision=${revision} .words=${words} ?readonly=${readonly}></elv-variants>` : nothing}
      ${this.#opened.has('wiring') ? html`<elv-wiring class="work" ?hidden=${!shown('wiring')} .active=${shown('wiring')}
        .schedule=${tried} .revision=${revision} .words=${words} ?readonly=${readonly} .only=${panel}></elv-wiring>` : nothing}
      ${this.#opened.has('bill') ? html`<elv-bill-table class="work" ?hidden=${!shown('bill')} .active=${shown('bill')}
        .schedule=${schedule} .revision=${revision} .words=${words} .only=${panel}></elv-bill-table>` : nothing}
      ${this.#opened.has('measure') ? html`<elv-measured-values class="work" ?hidden=${!shown('measure')} .active=${shown('measure')}
        .schedule=${schedule} .revision=${revision} .words=${words} .only=${panel}></elv-measured-values>` : nothing}
      ${this.#opened.has('loadTable') ? html`<elv-load-table class="work" ?hidden=${!shown('loadTable')} .active=${shown('loadTable')}
        .schedule=${schedule} .revision=${revision} .words=${words} ?readonly=${readonly} .only=${panel}></elv-load-table>` : nothing}
      ${this.#opened.has('rework') ? html`<elv-rework class="work" ?hidden=${!shown('rework')} .active=${shown('rework')}
        .schedule=${tried} .revision=${revision} .words=${words} .asked=${this.#asked}></elv-rework>` : nothing}`;
  }
}
