import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { writeSchedule } from '../../src/exchange/index.ts';
import { loadTableCsv } from '../../src/report/load-table-csv.ts';
import { loadTableHtml } from '../../src/report/load-table-html.ts';
import { buildReport, type Report } from '../../src/report/model/index.ts';
import { PAPERS, type Paper } from '../../src/report/page-styles.ts';
import { fileName, saveBlob, saveFile } from '../load-schedule/files.ts';
import { controls, statusMarkStyles, today } from '../look/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { styles } from './load-table.styles.ts';
import { readOlder, type OlderSchedule } from './older-schedule.ts';
import { isReady, showPage } from './page-frame.ts';
import { revisionList } from './revision-list.ts';
import { sectionTables } from './section-tables.ts';

const VIEWS = { preview: 'Preview', revisions: 'Revisions', changes: 'Changes' } as const;
export type LoadTableView = keyof typeof VIEWS;

const WORKBOOK = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** What is handed over: looked at, printed, saved in every form; the history of issues; what changed since an older schedule. */
export class LoadTable extends WorkArea {
  static override styles = [controls, workAreaStyles, statusMarkStyles, styles];
  static override properties: PropertyDeclarations = {
    readonly: { type: Boolean }, view: { state: true }, paper: { state: true }, older: { state: true }, problems: { state: true },
    saved: { state: true },
  };

  declare readonly: boolean;
  declare view: LoadTableView;
  declare protected paper: Paper;
  /** The schedule that is compared with; its changes are a part of the load table. */
  declare protected older: OlderSchedule | undefined;
  /** Why a file could not be compared with. */
  declare protected problems: readonly string[];
  /** What was saved last. */
  declare protected saved: string;
  protected readonly heading = 'Load table';
  protected readonly about = 'What the next person is given: it stands alone on paper, as a page, as a workbook.';
  #report: Report | undefined;

  constructor() {
    super();
    this.readonly = false;
    this.view = 'preview';
    this.paper = 'A4-landscape';
    this.problems = [];
    this.saved = '';
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (['schedule', 'revision', 'words', 'older'].some((key) => changed.has(key))) {
      this.#report = undefined;
      this.saved = '';
    }
  }

  protected body(): TemplateResult {
    const choose = (view: LoadTableView) => html`<button type="button" data-view=${view} aria-pressed=${view === this.view}
      @click=${() => { this.view = view; }}>${VIEWS[view]}</button>`;
    return html`<div class="options"><div class="choice" role="group" aria-label="Show">${(Object.keys(VIEWS) as LoadTableView[]).map(choose)}</div></div>
      ${this.view === 'preview' ? html`<iframe title="Load table" srcdoc="&lt;!doctype html&gt;" sandbox="allow-same-origin allow-modals" @load=${this.#fill}></iframe>`
        : this.view === 'revisions' ? revisionList(this.schedule, this.readonly) : this.#changes()}`;
  }

  protected foot(): TemplateResult {
    const save = (form: string, words: string, act: () => unknown) =>
      html`<button type="button" class="bordered" data-do=${form} @click=${act}>${words}</button>`;
    return html`<label>Paper <select data-do="paper" @change=${(event: Event) => { this.paper = (event.currentTarget as HTMLSelectElement).value as Paper; }}>
        ${PAPERS.map((paper) => html`<option value=${paper} ?selected=${paper === this.paper}>${paper.replace('-', ' ')}</option>`)}</select></label>
      <span class="quiet english" role="status">${this.saved}</span>
      <span class="save" role="group" aria-label="Save the load table">
        ${save('html', 'Save as HTML', this.#saveHtml)}${save('xlsx', 'Save as XLSX', this.#saveXlsx)}${save('csv', 'Save as CSV', this.#saveCsv)}</span>
      <button type="button" class="primary" data-do="print" @click=${this.#print}>Print</button>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    this.#fill();
  }

  /** Compares with the schedule, or the load table, that a file holds. */
  async compareWith(file: File): Promise<void> {
    const read = await readOlder(file);
    if (!('schedule' in read)) {
      this.problems = [`${file.name} cannot be compared with.`, ...read];
      return;
    }
    this.#put(read);
  }

  #put(older: OlderSchedule | undefined): void {
    this.older?.schedule.dispose();
    this.problems = [];
    this.older = older;
  }

  #changes(): TemplateResult {
    const section = this.older === undefined ? undefined : this.#reportNow.sections.find(({ name }) => name === 'changes');
    return html`<div class="files">
        <button type="button" class="bordered" data-do="chooseOlder" @click=${this.#chooseOlder}>Choose an older schedule</button>
        <input type="file" hidden aria-label="Older schedule" accept=".json,.html,.htm,.xlsx" @change=${this.#onFile}>
        ${this.older === undefined ? html`<span class="quiet english">or drop it here: a schedule (.json), or a load table saved as .html or .xlsx.</span>`
          : html`<strong>${this.older.name}</strong><button type="button" class="link" data-do="noOlder" @click=${() => { this.#put(undefined); }}>Compare with none</button>`}
      </div>
      ${this.problems.length === 0 ? nothing : html`<div class="problems" role="alert">${this.problems.map((text) => html`<p class="english">${text}</p>`)}</div>`}
      ${section === undefined ? nothing : html`<p class="quiet english">These changes are a part of the load table too, printed and saved.</p>${sectionTables(section)}`}`;
  }

  /** The load table of the schedule as it is now. */
  get #reportNow(): Report {
    return this.#report ??= buildReport(this.schedule, { generated: today(), words: this.words, since: this.older?.schedule });
  }

  get #frame(): HTMLIFrameElement | null {
    return this.renderRoot.querySelector('iframe');
  }

  readonly #fill = (): void => {
    const frame = this.#frame;
    if (this.active && frame !== null && isReady(frame)) showPage(frame, loadTableHtml(this.#reportNow, { paper: this.paper }));
  };

  readonly #print = async (): Promise<void> => {
    this.view = 'preview';
    await this.updateComplete;
    const frame = this.#frame!;
    if (!isReady(frame)) await new Promise((resolve) => { frame.addEventListener('load', resolve, { once: true }); });
    frame.contentWindow!.print();
  };

  readonly #saveHtml = (): void => {
    const name = this.#nameOf('html');
    const text = loadTableHtml(this.#reportNow, { paper: this.paper, schedule: writeSchedule(this.schedule.content()) });
    saveFile({ name, text }, 'text/html;charset=utf-8');
    this.saved = `Saved as ${name}. It carries the schedule: Open reads it back.`;
  };

  readonly #saveCsv = (): void => {
    const name = this.#nameOf('csv');
    saveFile({ name, text: loadTableCsv(this.#reportNow) }, 'text/csv;charset=utf-8');
    this.saved = `Saved as ${name}.`;
  };

  readonly #saveXlsx = async (): Promise<void> => {
    const name = this.#nameOf('xlsx');
    try {
      const { loadTableXlsx } = await import('../../src/report/xlsx/index.ts');
      const bytes = await loadTableXlsx(this.schedule, this.#reportNow);
      saveBlob(name, new Blob([new Uint8Array(bytes)], { type: WORKBOOK }));
      this.saved = `Saved as ${name}. Its figures are formulas; Open reads the schedule back as it is now.`;
    } catch (error) {
      this.saved = 'The workbook could not be made. Check the connection, then try again.';
      reportError(error);
    }
  };

  #nameOf(form: 'html' | 'xlsx' | 'csv'): string {
    return fileName(this.schedule).replace(/\.schedule\.json$/, `-load-table.${form}`);
  }

  readonly #chooseOlder = (): void => {
    const field = this.renderRoot.querySelector<HTMLInputElement>('input[type=file]')!;
    field.value = '';
    field.click();
  };

  readonly #onFile = (event: Event): void => {
    const file = (event.currentTarget as HTMLInputElement).files?.[0];
    if (file !== undefined) void this.compareWith(file);
  };
}
