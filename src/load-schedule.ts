import { fetchEngine, onceEngineCame, Touched, Workbook, type CaseTable } from './engine/index.ts';
import {
  Findings, remedyOf, type ChecksMade, type Finding, type Remedy, type Severity, type Standing, type StatusMove,
} from './findings/index.ts';
import {
  acceptFinding, beginRevision, columnOf, History, isFormula, isNumeric, isStatus, keepReference, mapReferences,
  readFormula, ScheduleDocument, lookOf, showFormula, toContent, toSnapshot, withdrawAcceptance, withLook,
  type CellValue, type Change, type Content, type FormulaProblem, type Handover, type LoggedAction, type Row,
  type RowAcceptance, type SheetLook, type SheetName, type Snapshot,
} from './schedule/index.ts';
import { ENGLISH, type Words } from './words/index.ts';

/** How a formula was copied to where it is to stand. */
export interface CopiedFormula {
  /** Rows by which references to its own sheet move, apart from those with a dollar sign. */
  readonly down: number;
  /** Ids of rows that come to the end of its sheet together with it. */
  readonly coming: readonly number[];
}

/** Something happened to a schedule. */
export interface ScheduleEvent {
  /** Name of the action for a person: «Paste of 40 rows». */
  readonly label: string;
  /** `formulas`: nothing was changed, and formulas that waited for the formula engine are worked out. */
  readonly cause: 'act' | 'undo' | 'redo' | 'load' | 'formulas';
  readonly changes: readonly Change[];
  /** The changes that take it back. */
  readonly inverse: readonly Change[];
  /** What is worth something else than before. */
  readonly touched: Touched;
  /** Rows that stand otherwise than before; `undefined` where everything was replaced. */
  readonly moved: readonly StatusMove[] | undefined;
}

/** How a schedule is made. */
export interface LoadScheduleOptions {
  /**
   * Key of the formula engine. `gpl-v3` takes the engine under the GPL, version 3; whoever has another licence gives
   * its key.
   */
  readonly engineLicenseKey?: string;
  /** The language in which findings and explanations speak; English unless said otherwise. */
  readonly words?: Words;
  /**
   * An earlier session to go on with, in the place of a content: what it began with, and all that was done in it, which
   * can be undone.
   */
  readonly session?: { readonly base: Snapshot; readonly actions: readonly LoggedAction[] };
}

/**
 * A load schedule: the document, what it comes to, what was found in it, and every action taken back or done again. It
 * needs no browser.
 */
export class LoadSchedule {
  readonly document: ScheduleDocument;
  /** Formulas of the content given at the start that could not be read; their cells are empty. */
  readonly formulaProblems: readonly FormulaProblem[];
  readonly #book: Workbook;
  readonly #findings: Findings;
  readonly #history: History;
  #words: Words;
  readonly #listeners = new Set<(event: ScheduleEvent) => void>();
  /** Ends the wait for the formula engine. */
  #endWait: (() => void) | undefined;

  constructor(content: Content = { details: {}, sheets: {} }, options: LoadScheduleOptions = {}) {
    const { session, words = ENGLISH } = options;
    this.#words = words;
    const { snapshot, problems } = session === undefined
      ? toSnapshot(content, words) : { snapshot: session.base, problems: [] };
    this.formulaProblems = problems;
    this.document = new ScheduleDocument(snapshot);
    this.#history = new History(this.document);
    for (const action of session?.actions ?? []) this.#history.repeat(action);
    this.#book = new Workbook(this.document, options.engineLicenseKey ?? 'gpl-v3');
    this.#findings = new Findings(this.document, this.#book, this.#words);
    this.#waitForEngine();
  }

  /** The language in which findings and explanations speak. */
  get words(): Words {
    return this.#words;
  }

  /**
   * Has findings and explanations speak another language from now on. Names of actions that are done stay as they are.
   */
  speak(words: Words): void {
    if (words === this.#words) return;
    this.#words = words;
    this.#findings.speak(words);
  }

  /** The rows of a sheet, in order. */
  rows(sheet: SheetName): readonly Row[] {
    return this.document.rows(sheet);
  }

  /**
   * What a cell is worth: entered, default or worked out; `null` when it is unknown. A number beyond the range of its
   * column is given as it was entered, though nothing is worked out of it.
   */
  value(sheet: SheetName, id: number, key: string): CellValue {
    const column = columnOf(sheet, key);
    if (isStatus(column)) return this.#findings.status(sheet, id);
    const own = column.role === 'input' ? this.document.row(sheet, id)?.cells[key] : null;
    return typeof own === 'number' && isNumeric(column) ? own : this.#book.value(sheet, id, key);
  }

  /** How a row stands: its status, or that all that counts against it is accepted; `null` for rows without limits. */
  standing(sheet: SheetName, id: number): Standing | null {
    return this.#findings.standing(sheet, id);
  }

  /** What a cell shows a person: what it is worth, and for a status how the row stands. */
  shown(sheet: SheetName, id: number, key: string): CellValue {
    return isStatus(columnOf(sheet, key)) ? this.standing(sheet, id) : this.value(sheet, id, key);
  }

  /** Whether a person entered what a cell holds. */
  isOwn(sheet: SheetName, id: number, key: string): boolean {
    return (this.document.row(sheet, id)?.cells[key] ?? null) !== null;
  }

  /** Whether a figure lacks something, whether a sign says so or not. */
  isPartial(sheet: SheetName, id: number, key: string): boolean {
    return this.#book.isPartial(sheet, id, key);
  }

  /** Sign to show before a figure that follows from a total that lacks rows; empty for whole figures. */
  partialSign(sheet: SheetName, id: number, key: string): '≥' | '≤' | '' {
    const column = columnOf(sheet, key);
    return column.role === 'computed' && this.#book.isPartial(sheet, id, key) ? column.whenPartial ?? '' : '';
  }

  /**
   * The formula that a person typed in a cell.
   * @param words the language by whose decimal sign it is read and typed; that of files unless said otherwise.
   */
  formulaText(sheet: SheetName, id: number, key: string, words: Words = ENGLISH): string | undefined {
    const own = this.document.row(sheet, id)?.cells[key];
    return isFormula(own) && isNumeric(columnOf(sheet, key))
      ? showFormula(own, sheet, this.document, words) : undefined;
  }

  /** Id of the row that a reference names; -1 when it names none. */
  target(sheet: SheetName, id: number, key: string): number {
    return this.#book.target(sheet, id, key);
  }

  /** Ids of the rows of a sheet whose reference `by` names a row, in order. */
  members(sheet: SheetName, by: string, target: number): number[] {
    return this.#book.members(sheet, by, target);
  }

  /** The cases of the schedule in their order, with the factors that they give groups. */
  get cases(): CaseTable {
    return this.#book.cases;
  }

  /**
   * What a figure that is worked out in cases is worth for a row in one of them, by its place among `cases.cases`, or
   * for -1 by the diversity of rows alone.
   * @returns `null` where it is not known.
   */
  inCase(sheet: SheetName, id: number, key: string, place: number): number | null {
    return this.#book.inCase(sheet, id, key, place);
  }

  /** The most that such a figure comes to in what counts for a row; `null` where it is not known. */
  mostInCases(sheet: SheetName, id: number, key: string): number | null {
    return this.#book.most(sheet, id, key);
  }

  /** Whether what the diversity of rows alone gives counts for a row: not where every case names all that is on it. */
  countsOwn(sheet: SheetName, id: number, key: string): boolean {
    return this.#book.countsOwn(sheet, id, key);
  }

  /** Outcome of a row that is no figure, such as that a run has no working voltage. */
  outcome(sheet: SheetName, id: number): string | undefined {
    return this.#book.outcome(sheet, id);
  }

  /** Every finding, the worst first. */
  get findings(): readonly Finding[] {
    return this.#findings.all;
  }

  /** Number of findings of each severity. */
  get findingCounts(): Readonly<Record<Severity, number>> {
    return this.#findings.counts;
  }

  /** What was found in one row, in the order of the checks. */
  findingsOf(sheet: SheetName, id: number): readonly Finding[] {
    return this.#findings.of(sheet, id);
  }

  /** The rules that count against the status of a row; findings of those that are told elsewhere are in other rows. */
  rulesAgainst(sheet: SheetName, id: number): readonly string[] {
    return this.#findings.rules(sheet, id);
  }

  /** All figures as they are worked out, for what explains them. Not to be changed, nor kept over a change of rows. */
  get figures(): Workbook {
    return this.#book;
  }

  /** What the status of a row rests on: the findings that make it what it is, and what became of its checks. */
  statusBasis(sheet: SheetName, id: number): { readonly deciding: readonly Finding[]; readonly made: ChecksMade } {
    return { deciding: this.#findings.deciding(sheet, id), made: this.#findings.made(sheet, id) };
  }

  /**
   * Reads a formula that a person typed, or copied from elsewhere.
   * @returns the value for the cell, or a sentence that says what is wrong with it.
   */
  checkFormula(
    sheet: SheetName, key: string, text: string, copied?: CopiedFormula,
  ): { ok: true; value: string } | { ok: false; problem: string } {
    const rowAt = (name: SheetName, position: number) => {
      const rows = this.document.rows(name);
      return rows[position]?.id ?? (name === sheet ? copied?.coming[position - rows.length] : undefined);
    };
    const read = readFormula(text, sheet, rowAt, this.#words, copied?.down);
    if (!read.ok) return { ok: false, problem: read.problem };
    // Rows that are still to come can be no part of a trial.
    const tried = copied === undefined ? read.formula : mapReferences(read.formula, () => keepReference(undefined));
    const problem = this.#book.problemOf(sheet, key, tried, this.#words);
    return problem === undefined ? { ok: true, value: read.formula } : { ok: false, problem: `${text}: ${problem}` };
  }

  /**
   * Settled as soon as all formulas are worked out, for which a page fetches the formula engine. Until then they are
   * unknown, and whoever subscribes hears when they are not.
   * @returns false where it could not be fetched: the formulas stay unknown, as their findings say, and the next action
   * tries again.
   */
  async formulasReady(): Promise<boolean> {
    if (!this.#book.awaitsEngine) return true;
    try {
      await fetchEngine();
      return true;
    } catch {
      // The formulas say so in their findings.
      return false;
    }
  }

  /**
   * Builds the formula engine, where it has been fetched, and tries a formula in it, so that the first one need not
   * wait for either: a page calls this while it is idle.
   */
  startFormulas(): void {
    this.checkFormula('devices', 'qty', '=ROUND(2.5*3;0)');
  }

  /** Carries out changes as one action, which `undo` takes back in one step. */
  act(label: string, changes: readonly Change[]): void {
    if (changes.length === 0) return;
    const all = [...changes, ...beginRevision(this.document, changes)];
    const inverse = this.#history.act(label, all);
    this.#follow(label, 'act', all, inverse);
  }

  /**
   * Accepts a finding as it is now, as one action; when it grows worse it is open again.
   * @param by who accepts it, why, and the date as YYYY-MM-DD.
   */
  accept(finding: Finding, by: Pick<RowAcceptance, 'reason' | 'name' | 'date'>): void {
    this.act(this.#words.say('Acceptance of a finding'), acceptFinding(this.document, finding, by));
  }

  /** Takes the acceptance of a finding back, as one action. */
  withdraw(finding: Finding): void {
    this.act(this.#words.say('Withdrawal of an acceptance'), withdrawAcceptance(this.document, finding));
  }

  /** What puts right what a finding is about, where that needs no choice. */
  remedy(finding: Finding): Remedy | undefined {
    return remedyOf(this.document, finding, this.#words);
  }

  /** Takes the last action back. @returns its label, or `undefined` when there is none. */
  undo(): string | undefined {
    return this.#step('undo', this.#history.undoLabel);
  }

  /** Does the action that was taken back last again. @returns its label. */
  redo(): string | undefined {
    return this.#step('redo', this.#history.redoLabel);
  }

  /** The action that was done last: the same object again whenever everything is as it was right after it. */
  get lastAction(): object | undefined {
    return this.#history.last;
  }

  /** Name of the action that `undo` takes back; `undefined` when there is none. */
  get undoLabel(): string | undefined {
    return this.#history.undoLabel;
  }

  /** Name of the action that `redo` does again; `undefined` when there is none. */
  get redoLabel(): string | undefined {
    return this.#history.redoLabel;
  }

  /** How a sheet is looked at: which columns are in sight, stay in view, and how wide they are. */
  look(sheet: SheetName): SheetLook {
    return lookOf(this.document.view, sheet);
  }

  /** Has a sheet looked at in another way, which files and drafts keep; it is no action. */
  setLook(sheet: SheetName, changed: Partial<SheetLook>): void {
    this.document.view = withLook(this.document.view, sheet, changed);
  }

  /** What of the load table is handed over. */
  get handover(): Handover {
    return this.document.view?.loadTable ?? {};
  }

  /** Has something else of the load table handed over, which files and drafts keep; it is no action. */
  setHandover(changed: Handover): void {
    this.document.view = { ...this.document.view, loadTable: { ...this.handover, ...changed } };
  }

  /** What a file of this schedule holds. */
  content(): Content {
    return toContent(this.document);
  }

  /** What a file of this schedule would hold before the first action. */
  contentAtStart(): Content {
    return this.contentAfter(this.#history.inverse);
  }

  /** What a file would hold after some changes, which are not carried out. */
  contentAfter(changes: readonly Change[]): Content {
    if (changes.length === 0) return this.content();
    const document = new ScheduleDocument(this.document.snapshot());
    document.perform(changes);
    return toContent(document);
  }

  /**
   * Replaces everything, as one action. Nothing happens when a formula of the content cannot be read.
   * @returns the formulas that cannot be read.
   */
  load(content: Content, label: string): readonly FormulaProblem[] {
    const { snapshot, problems } = toSnapshot(content, this.#words);
    if (problems.length > 0) return problems;
    // A copy, which no later change of the content reaches: the history keeps it.
    const changes: Change[] = [{ op: 'load', snapshot: new ScheduleDocument(snapshot).snapshot() }];
    const inverse = this.#history.act(label, changes);
    this.#follow(label, 'load', changes, inverse);
    return [];
  }

  /**
   * Calls a listener after every action. What it throws is thrown again once everybody has heard of the action, outside
   * of it.
   * @returns a function that ends it.
   */
  subscribe(listener: (event: ScheduleEvent) => void): () => void {
    this.#listeners.add(listener);
    return () => { this.#listeners.delete(listener); };
  }

  /** Frees the formula engine. The schedule must not be used afterwards. */
  dispose(): void {
    this.#endWait?.();
    this.#listeners.clear();
    this.#book.destroy();
  }

  #step(cause: 'undo' | 'redo', label: string | undefined): string | undefined {
    const step = this.#history[cause]();
    if (label !== undefined && step !== undefined) this.#follow(label, cause, step.changes, step.inverse);
    return label;
  }

  #follow(label: string, cause: ScheduleEvent['cause'], changes: readonly Change[], inverse: readonly Change[]): void {
    const touched = this.#book.update(Touched.by(changes, inverse));
    this.#tell(label, cause, changes, inverse, touched);
    this.#waitForEngine();
  }

  /** Has formulas worked out once the formula engine, which is fetched for them, is there. */
  #waitForEngine(): void {
    if (!this.#book.awaitsEngine) return;
    this.#endWait ??= onceEngineCame(() => {
      this.#endWait = undefined;
      const touched = this.#book.takeUpFormulas();
      if (touched.size > 0) this.#tell(this.#words.say('Formulas calculated'), 'formulas', [], [], touched);
    });
    void this.formulasReady();
  }

  #tell(
    label: string, cause: ScheduleEvent['cause'], changes: readonly Change[], inverse: readonly Change[],
    touched: Touched,
  ): void {
    const moved = this.#findings.update(touched, changes);
    const event: ScheduleEvent = { label, cause, changes, inverse, touched, moved };
    for (const listener of this.#listeners) tell(listener, event);
  }
}

/** Tells a listener. The action is done by then and others are to hear of it, so that its error is none of theirs. */
function tell(listener: (event: ScheduleEvent) => void, event: ScheduleEvent): void {
  try {
    listener(event);
  } catch (error) {
    queueMicrotask(() => { throw error; });
  }
}
