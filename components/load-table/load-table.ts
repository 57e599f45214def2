import '../drawings/schedule-drawings.define.ts';
import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { writeSchedule } from '../../src/exchange/index.ts';
import { loadTableCsv } from '../../src/report/load-table-csv.ts';
import { withoutVariants } from '../../src/report/digest/index.ts';
import { loadTableHtml } from '../../src/report/load-table-html.ts';
import {
  buildReport, changesSince, FORMS, FORM_TITLES, handedOver, SECTION_NAMES, type Form, type Handed, type Report,
} from '../../src/report/model/index.ts';
import type { Handover } from '../../src/schedule/index.ts';
import { LookEvent } from '../events/index.ts';
import type { PanelChoice } from '../../src/engine/panel-of.ts';
import { panelView } from '../../src/report/panel-view.ts';
import { PAPERS, usualPaper, type Paper } from '../../src/report/paper.ts';
import { message } from '../../src/words/index.ts';
import { fileName, saveBlob, saveFile } from '../load-schedule/files.ts';
import { controls, statusMarkStyles, today } from '../look/index.ts';
import { WorkArea, workAreaStyles } from '../work-area/index.ts';
import { styles } from './load-table.styles.ts';
import { editsRefusal } from '../sheet-view/notices.ts';
import { readOlder, type OlderSchedule } from './older-schedule.ts';
import { isReady, showPage } from './page-frame.ts';
import { documentFields } from './document-fields.ts';
import { revisionList } from './revision-list.ts';
import { sectionTables } from './section-tables.ts';

const VIEWS = {
  preview: message('Preview'), oneLine: message('One-line'), branches: message('Branches'), revisions: message('Revisions'),
  changes: message('Changes'),
} as const;
export type LoadTableView = keyof typeof VIEWS;

const PAPER_WORDS: Readonly<Record<Paper, string>> = {
  'A4-landscape': message('A4 landscape'), 'A4-portrait': message('A4 portrait'),
  'A3-landscape': message('A3 landscape'), 'A3-portrait': message('A3 portrait'),
};

const WORKBOOK = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/**
 * What is handed over: looked at, printed, saved in every form; the history of issues; what changed since an older
 * schedule.
 */
export class LoadTable extends WorkArea {
  static override styles = [controls, workAreaStyles, statusMarkStyles, styles];
  static override properties: PropertyDeclarations = {
    readonly: { type: Boolean }, only: { attribute: false }, view: { state: true }, paper: { state: true },
    older: { state: true }, problems: { state: true },
    saved: { state: true },
  };

  declare readonly: boolean;
  /** The panel that the load table is of; all of them by default. */
  declare only: PanelChoice;
  declare view: LoadTableView;
  declare protected paper: Paper;
  /** The schedule that is compared with; its changes are a part of the load table. */
  declare protected older: OlderSchedule | undefined;
  /** Why a file could not be compared with. */
  declare protected problems: readonly string[];
  /** What was saved last. */
  declare protected saved: string;
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
    if (['schedule', 'revision', 'words', 'older', 'only', 'paper'].some((key) => changed.has(key))) {
      this.#report = undefined;
      this.saved = '';
    }
  }

  protected get heading(): string {
    return this.words.say('Load table');
  }

  protected get about(): string {
    return this.words.say('What the next person is given: it stands alone on paper, as a page, as a workbook.');
  }

  protected body(): TemplateResult {
    const { words, schedule } = this;
    const choose = (view: LoadTableView) =>
      html`<button type="button" data-view=${view} aria-pressed=${view === this.view}
      @click=${() => { this.view = view; }}>${words.say(VIEWS[view])}</button>`;
    return html`<div class="options"><div class="choice" role="group" aria-label=${words.say('Show')}>${(Object.keys(VIEWS) as LoadTableView[]).map(choose)}</div>${this.view === 'preview' && this.active ? this.#choices() : nothing}</div>
      ${this.view === 'preview' ? html`<iframe title=${words.say('Load table')} srcdoc="&lt;!doctype html&gt;" sandbox="allow-same-origin allow-modals" @load=${this.#fill}></iframe>`
        : this.view === 'oneLine' || this.view === 'branches' ? html`<elv-drawings .kind=${this.view} .schedule=${schedule} .revision=${this.revision}
          .words=${words} .only=${this.only} .active=${this.active}></elv-drawings>`
        : this.view === 'revisions' ? html`${documentFields(schedule, this.readonly)}${revisionList(schedule, this.readonly, this.revision)}` : this.#changes()}`;
  }

  /** What is handed over: for what, and which of its sections. */
  #choices(): TemplateResult {
    const { words } = this;
    const { form, without, allPictures } = handedOver(this.schedule.handover);
    const { sections, leftOut } = this.#reportNow;
    const all = SECTION_NAMES.flatMap((name) =>
      [...sections, ...leftOut].find((section) => section.name === name) ?? []);
    const onSection = (name: string, isIn: boolean) => {
      this.#hand({ without: isIn ? without.filter((each) => each !== name) : [...without, name] });
    };
    return html`<label>${words.say('Form')} <select data-do="form" @change=${(event: Event) => {
        const chosen = (event.currentTarget as HTMLSelectElement).value as Form;
        this.paper = usualPaper(chosen);
        this.#hand({ form: chosen });
      }}>${FORMS.map((each) => html`<option value=${each} ?selected=${each === form}>${words.say(FORM_TITLES[each])}</option>`)}</select></label>
      <details class="sections"><summary>${leftOut.length === 0 ? words.say('Sections') : words.say('Sections: {n} left out', { n: leftOut.length })}</summary>
        <div>${all.map(({ name, title }) => html`<label><input type="checkbox" data-section=${name} .checked=${live(!leftOut.some((each) => each.name === name))}
          @change=${({ currentTarget }: Event) => { onSection(name, (currentTarget as HTMLInputElement).checked); }}>${title}</label>`)}
        ${form !== 'full' ? nothing : html`<label><input type="checkbox" data-do="allPictures" .checked=${live(allPictures)}
          @change=${({ currentTarget }: Event) => { this.#hand({ allPictures: (currentTarget as HTMLInputElement).checked }); }}>${words.say('Draw runs within their limits too')}</label>`}</div></details>`;
  }

  /** Has something else handed over, which the file keeps. */
  #hand(changed: Handover): void {
    this.schedule.setHandover(changed);
    this.#report = undefined;
    this.saved = '';
    // The draft keeps it with how sheets are looked at.
    this.dispatchEvent(new LookEvent({}));
    this.requestUpdate();
  }

  protected foot(): TemplateResult {
    const { words } = this;
    const save = (form: string, text: string, act: () => unknown) =>
      html`<button type="button" class="bordered" data-do=${form} @click=${act}>${text}</button>`;
    return html`<label>${words.say('Paper')} <select data-do="paper" @change=${(event: Event) => { this.paper = (event.currentTarget as HTMLSelectElement).value as Paper; }}>
        ${PAPERS.map((paper) => html`<option value=${paper} ?selected=${paper === this.paper}>${words.say(PAPER_WORDS[paper])}</option>`)}</select></label>
      <span class="quiet spoken" role="status">${this.saved}</span>
      <span class="save" role="group" aria-label=${words.say('Save the load table')}>
        ${save('html', words.say('Save as HTML'), this.#saveHtml)}${save('xlsx', words.say('Save as XLSX'), this.#saveXlsx)}${save('csv', words.say('Save as CSV'), this.#saveCsv)}</span>
      <button type="button" class="primary" data-do="print" @click=${this.#print}>${words.say('Print')}</button>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    this.#fill();
  }

  /** Compares with the schedule, or the load table, that a file holds. */
  async compareWith(file: File): Promise<void> {
    const read = await readOlder(file, this.words);
    if (!('schedule' in read)) {
      this.problems = [this.words.say('{name} cannot be compared with.', { name: file.name }), ...read];
      return;
    }
    this.#put(read);
    if (read.edits.length === 0) return;
    const { title, problems } = editsRefusal(this.words, read.name, read.edits);
    this.problems = [title, ...problems.map(({ message }) => message)];
  }

  #put(older: OlderSchedule | undefined): void {
    this.older?.schedule.dispose();
    this.problems = [];
    this.older = older;
  }

  #changes(): TemplateResult {
    const { words } = this;
    const section = this.older
      && changesSince(panelView(this.older.schedule, this.only), panelView(this.schedule, this.only));
    return html`<div class="files">
        <button type="button" class="bordered" data-do="chooseOlder" @click=${this.#chooseOlder}>${words.say('Choose an older schedule')}</button>
        <input type="file" hidden aria-label=${words.say('Older schedule')} accept=".json,.html,.htm,.xlsx" @change=${this.#onFile}>
        ${this.older === undefined ? html`<span class="quiet spoken">${words.say('or drop it here: a schedule (.json), or a load table saved as .html or .xlsx.')}</span>`
          : html`<strong>${this.older.name}</strong><button type="button" class="link" data-do="noOlder" @click=${() => { this.#put(undefined); }}>${words.say('Compare with none')}</button>`}
      </div>
      ${this.problems.length === 0 ? nothing : html`<div class="problems" role="alert">${this.problems.map((text) => html`<p class="spoken">${text}</p>`)}</div>`}
      ${section === undefined ? nothing : html`<p class="quiet spoken">${words.say('These changes are a part of the load table too, printed and saved.')}</p>${sectionTables(section, words)}`}`;
  }

  /** The load table of the schedule as it is now. */
  get #reportNow(): Report {
    return this.#report ??= this.#reportOf(handedOver(this.schedule.handover));
  }

  #reportOf(handed: Partial<Handed>): Report {
    return buildReport(this.schedule, {
      generated: today(), since: this.older?.schedule, panel: this.only, paper: this.paper, ...handed,
    });
  }

  get #frame(): HTMLIFrameElement | null {
    return this.renderRoot.querySelector('iframe');
  }

  readonly #fill = (): void => {
    const frame = this.#frame;
    if (!this.active || frame === null || !isReady(frame)) return;
    showPage(frame, loadTableHtml(this.#reportNow, { paper: this.paper }), this.#reportNow.words.language);
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
    const text = loadTableHtml(
      this.#reportNow, { paper: this.paper, schedule: writeSchedule(withoutVariants(this.schedule.content())) }
    );
    saveFile({ name, text }, 'text/html;charset=utf-8');
    this.saved = this.words.say('Saved as {name}. It carries the schedule: Open reads it back.', { name });
  };

  readonly #saveCsv = (): void => {
    const name = this.#nameOf('csv');
    saveFile({ name, text: loadTableCsv(this.#reportNow) }, 'text/csv;charset=utf-8');
    this.saved = this.words.say('Saved as {name}.', { name });
  };

  readonly #saveXlsx = async (): Promise<void> => {
    const name = this.#nameOf('xlsx');
    try {
      const { loadTableXlsx } = await import('../../src/report/xlsx/index.ts');
      const bytes = await loadTableXlsx(this.schedule, this.#reportOf({}));
      saveBlob(name, new Blob([new Uint8Array(bytes)], { type: WORKBOOK }));
      this.saved = this.words.say(
        'Saved as {name}. Its figures are formulas; Open reads the schedule back as it is now.', { name }
      );
    } catch (error) {
      this.saved = this.words.say('The workbook could not be made. Check the connection, then try again.');
      reportError(error);
    }
  };

  #nameOf(form: 'html' | 'xlsx' | 'csv'): string {
    return fileName(this.schedule, `-load-table.${form}`);
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
