import { isScheduleText, readSchedule, writeSchedule } from '../../src/exchange/index.ts';
import type { ListWay } from '../../src/exchange/update/list-ways.ts';
import { LoadSchedule } from '../../src/load-schedule.ts';
import { columnOf, isBlank, SCHEMA, type Content, type FormulaProblem, type SheetName } from '../../src/schedule/index.ts';
import type { Words } from '../../src/words/index.ts';
import { isDraftFile } from '../drafts/index.ts';
import { UNFETCHED } from '../look/unfetched.ts';
import type { OfferedRows, TakeRows } from '../rows-offer/offered-rows.ts';
import { ElvErrorEvent, ElvLoadEvent, type ElvProblem } from './events.ts';
import { fileName, saveFile, type NamedText } from './files.ts';
import { editsRefusal, fileRefusal, type Message, type Refusal } from '../sheet-view/notices.ts';
import type { Unsettled } from '../grid/unsettled.ts';
import { engineFor } from './engine-for.ts';
import { readDraft, readScheduleFile, readText, type FileReading, type ReadText } from './read-file.ts';
import { RemoteFile, type RemoteFileHost } from './remote-file.ts';
import type { ScheduleHolder } from './schedule-holder.ts';
import { Turns } from './turns.ts';

/** What the files of an element need of it. */
export interface FilesHost extends RemoteFileHost {
  /** Tells the person what happened. */
  say(message: Message): void;
  showSheet(sheet: SheetName): void;
  /** The schedule is the same as a file that was opened. */
  fileOpened(): void;
  /** Offers the schedule to the page, to be kept. @returns whether it takes it, or is still keeping an earlier one. */
  pageTakes(name: string, text: string): boolean;
  /** The schedule was handed out as a file; whether that was written cannot be known. */
  fileHandedOut(): void;
  /** Takes over what a person is typing, before something else takes the place of what there is. */
  settle(): void;
}

/** Reads files into the schedule of an element and writes them: all of a file or nothing, and one action to undo. */
export class ScheduleFiles {
  /** What was refused last, until it is dismissed. */
  refusal: Refusal | undefined;
  /** What was being typed and could not be taken over, until it is dismissed. */
  unsettled: Refusal | undefined;
  /** Rows of a file that wait for a person to say what becomes of them. */
  offered: OfferedRows | undefined;
  /** What the schedule began with, or what was kept of it last, as text; `undefined` where it began with nothing. */
  began: Content | string | undefined;
  readonly #host: FilesHost;
  readonly #holder: ScheduleHolder;
  readonly #remote: RemoteFile;
  readonly #turns = new Turns();
  /** The turn of the file that is being fetched. */
  #fetching = 0;

  constructor(host: FilesHost, holder: ScheduleHolder) {
    this.#host = host;
    this.#holder = holder;
    this.#remote = new RemoteFile(host);
  }

  /** Name of the file that is being waited for; empty when the wait is too short to mention. */
  get waitingFor(): string {
    return this.#remote.waitingFor;
  }

  get #words(): Words {
    return this.#holder.schedule.words;
  }

  /** Whether the element was taken off its page while a file was on its way. */
  get isInterrupted(): boolean {
    return this.#remote.interrupted !== '';
  }

  /** The turn of what is asked for now. */
  next(): number {
    return this.#turns.next();
  }

  /** What had a turn is shown now: what was asked for before it is not waited for any longer. */
  show(turn: number): void {
    this.#turns.show(turn);
    if (this.#fetching < turn) this.cancel();
  }

  /** Opens a schedule or a draft, or reads a CSV file into its sheet. @returns what is wrong with it. */
  async open(
    file: File | NamedText, byPerson: boolean, sheet?: SheetName, turn = this.next(),
  ): Promise<readonly ElvProblem[]> {
    const { name } = file;
    const named = await this.#read(file);
    const isDraft = sheet === undefined && named.ok && isDraftFile(named.text);
    const draft = isDraft ? await this.#readDraft(named) : undefined;
    const reading = draft ?? (named.ok ? await this.#readAny(named, sheet) : named);
    if (this.#turns.isOutrun(turn)) return [this.#outrun(name)];
    if (!named.ok) return this.#refuse(name, named.problems, byPerson, named.total);
    const { schedule } = this.#holder;
    if (byPerson && reading.ok && reading.offer !== undefined && !schedule.rows(reading.sheet!).every(isBlank)) {
      await this.#offer({ name, ...reading.offer });
      return [];
    }
    const problems = this.take(name, reading, byPerson, turn);
    if (problems.length > 0 || named.edits.length === 0) return problems;
    const { offered, left } = named.edited ?? { offered: [], left: [] };
    if (byPerson && offered.length > 0) await this.#offer({ name, lists: offered, notes: left, areEdits: true });
    else this.refuse(editsRefusal(this.#words, name, named.edits));
    return problems;
  }

  /** Reads a schedule, or rows of a sheet, whose reader is fetched with the first of them. */
  async #readAny(file: ReadText, sheet: SheetName | undefined): Promise<FileReading> {
    if (sheet === undefined && isScheduleText(file)) return readScheduleFile(file, this.#words);
    try {
      const { readSheetFile } = await import('./read-sheet-file.ts');
      return readSheetFile(file, this.#holder.schedule, sheet);
    } catch (error) {
      return this.#unfetched(error);
    }
  }

  /**
   * Reads a CSV text into its sheet, as one action of the page.
   * @returns what is wrong with it, and each row that was left out.
   */
  async importCsv(
    text: string, sheet: SheetName | undefined, how: ListWay | undefined,
  ): Promise<readonly ElvProblem[]> {
    const [name, turn] = ['CSV', this.next()];
    const [{ readSheetFile }] = await Promise.all([import('./read-sheet-file.ts'), engineFor(text)]);
    if (this.#turns.isOutrun(turn)) return [this.#outrun(name)];
    const reading = readSheetFile({ name, text }, this.#holder.schedule, sheet);
    return how === undefined ? this.take(name, reading, false, turn) : this.#bring(name, reading, how, turn);
  }

  /** Puts the content of a file in the place of what there is, as one action. @returns what is wrong with it. */
  take(name: string, reading: FileReading, byPerson: boolean, turn = this.next()): readonly ElvProblem[] {
    if (!reading.ok) return this.#refuse(name, reading.problems, byPerson, reading.total);
    this.dismiss();
    this.#host.settle();
    const load = () => this.#holder.schedule.load(reading.content, reading.label);
    const faults = byPerson ? load() : this.#holder.quietly(load);
    if (faults.length > 0) return this.#refuse(name, faults.map((fault) => this.#problem(fault)), byPerson);
    this.show(turn);
    if (reading.sheet !== undefined) this.#host.showSheet(reading.sheet);
    else if (reading.isDraft !== true) {
      this.began = reading.content;
      this.#host.fileOpened();
    }
    this.#host.say({ text: [reading.label, ...reading.notes].join('. '), tone: 'info', offers: ['undo'] });
    if (byPerson) this.#host.dispatchEvent(new ElvLoadEvent(name, reading.sheet));
    return [];
  }

  /**
   * Takes the rows of a sheet in another way than in the place of those that are there, as one action of the page.
   * @returns what is wrong with the file, and each row that was left out.
   */
  async #bring(
    name: string, reading: FileReading, how: ListWay, turn: number,
  ): Promise<readonly ElvProblem[]> {
    if (!reading.ok) return this.#refuse(name, reading.problems, false, reading.total);
    const { takeList } = await import('../../src/exchange/update/take-list.ts');
    if (this.#turns.isOutrun(turn)) return [this.#outrun(name)];
    this.#host.settle();
    const { schedule } = this.#holder;
    const taken = takeList(schedule, reading.offer!.lists[0]!, name, how, { words: this.#words });
    if ('content' in taken) return this.take(name, { ...reading, ...taken }, false, turn);
    this.#holder.quietly(() => { schedule.act(taken.label, taken.changes); });
    this.show(turn);
    return taken.update.leftOut.map(({ line, reason }) => ({ line, message: reason }));
  }

  /** Takes rows that were offered as a person says, as one action. */
  readonly takeOffered: TakeRows = (make) => {
    const { name, lists: [list] } = this.offered!;
    this.dismissOffer();
    this.#host.settle();
    const { schedule } = this.#holder;
    const taken = make(schedule);
    const reading = { ok: true as const, sheet: list!.sheet, label: taken.label, notes: taken.notes };
    if ('content' in taken) {
      this.take(name, { ...reading, content: taken.content }, true);
      return;
    }
    schedule.act(taken.label, taken.changes);
    this.#host.say({ text: [taken.label, ...taken.notes].join('. '), tone: 'info', offers: taken.changes.length > 0 ? ['undo'] : [] });
    this.#host.dispatchEvent(new ElvLoadEvent(name, list!.sheet));
  };

  /** Leaves everything as it is. */
  readonly dismissOffer = (): void => {
    this.offered = undefined;
    this.#host.requestUpdate();
  };

  /** Begins with a content: there is nothing to undo. @returns what is wrong with it. */
  start(content: Content, turn = this.next()): readonly ElvProblem[] {
    const schedule = new LoadSchedule(content);
    if (schedule.formulaProblems.length === 0) {
      this.dismiss();
      this.began = content;
      this.#holder.replace(schedule, true);
      this.show(turn);
      return [];
    }
    schedule.dispose();
    return schedule.formulaProblems.map((fault) => this.#problem(fault));
  }

  /** Begins with the text of a schedule file. @returns what is wrong with it, which a person is told too. */
  startText(name: string, text: string, turn = this.next()): readonly ElvProblem[] {
    const reading = readSchedule(text, this.#words);
    if (!reading.ok) return this.#refuse(name, reading.problems, true, reading.total);
    return this.#startOrRefuse(name, reading.content, turn);
  }

  /**
   * Begins with the file at an address. What a person did while it was on its way can be had back by undoing.
   * @param giveWay says whether something else is shown in its place; it is given nothing where there is no such file.
   * @returns whether it is shown, or what it gives way to; `undefined` when something else took its place.
   */
  async startFrom(
    address: string, giveWay: (content: Content | undefined) => Promise<boolean>, turn = this.next(),
  ): Promise<boolean | undefined> {
    const { lastAction } = this.#holder.schedule;
    const fetched = await this.#fetch(address, turn);
    if (fetched === undefined) return undefined;
    const reading = fetched.ok ? readScheduleFile({ name: address, text: fetched.text }, this.#words)
      : { ok: false as const, problems: [{ message: fetched.problem }], total: 1 };
    if (!reading.ok) this.#refuse(address, reading.problems, true, reading.total);
    if (await giveWay(reading.ok ? reading.content : undefined)) return true;
    if (!reading.ok) return false;
    if (this.#turns.isOutrun(turn)) return undefined;
    this.#host.settle();
    const isIdle = this.#holder.schedule.lastAction === lastAction;
    const problems = isIdle ? this.#startOrRefuse(address, reading.content, turn)
      : this.take(address, reading, false, turn);
    if (problems.length === 0) this.#host.dispatchEvent(new ElvLoadEvent(address));
    return problems.length === 0;
  }

  /** Waits for no file any longer. @param byPerson it is told as a file that could not be had. */
  cancel(byPerson = false): void {
    this.#remote.cancel(byPerson);
  }

  /** Opens the file at an address, as if a person had it. */
  async openFrom(address: string): Promise<void> {
    const turn = this.next();
    const fetched = await this.#fetch(address, turn);
    if (fetched === undefined) return;
    const name = address.split('/').at(-1)!;
    if (fetched.ok) await this.open({ name, text: fetched.text }, true, undefined, turn);
    else this.#refuse(name, [{ message: fetched.problem }], true);
  }

  save(): void {
    const { schedule } = this.#holder;
    const name = fileName(schedule);
    const text = writeSchedule(schedule.content());
    if (this.#host.pageTakes(name, text)) return;
    saveFile({ name, text }, 'application/json');
    this.#host.say({ text: this.#words.say('Saved as {file}', { file: name }), tone: 'info' });
    this.#host.fileHandedOut();
  }

  async saveCsv(sheet: SheetName): Promise<void> {
    const part = await import('../../src/exchange/csv/index.ts').catch((error: unknown) => { this.#sayUnfetched(error); });
    if (part === undefined) return;
    const { schedule } = this.#holder;
    const name = fileName(schedule, `-${sheet}.csv`);
    saveFile({ name, text: part.writeCsv(schedule, sheet) }, 'text/csv;charset=utf-8');
    const text = this.#words.say(
      '{sheet} saved as {file}', { sheet: this.#words.text(SCHEMA[sheet].title), file: name }
    );
    this.#host.say({ text, tone: 'info' });
  }

  /** Keeps a text that was being typed and could not be taken over, with what is wrong with it. */
  keepTyped({ sheet, row, text, problem }: Unsettled): void {
    const words = this.#words;
    const values = { sheet: words.text(SCHEMA[sheet].title), row, text, problem };
    const message = words.say('{sheet}, row {row}: {text} – {problem}', values);
    this.unsettled = {
      title: words.say('What was being typed was not taken over. It is kept here until it is dismissed.'),
      problems: [...this.unsettled?.problems ?? [], { message }],
    };
    this.#host.requestUpdate();
  }

  /** Lets go of what was being typed. */
  dismissTyped(): void {
    this.unsettled = undefined;
    this.#host.requestUpdate();
  }

  /** Shows what was refused, with every reason. */
  refuse(refusal: Refusal): void {
    this.refusal = refusal;
    this.#host.requestUpdate();
  }

  dismiss(): void {
    this.refusal = this.offered = undefined;
    this.#host.requestUpdate();
  }

  /** Asks what becomes of rows; the part that asks is fetched with the first question. */
  async #offer(offered: OfferedRows): Promise<void> {
    this.dismiss();
    try {
      await import('../rows-offer/rows-offer.define.ts');
    } catch (error) {
      this.#sayUnfetched(error);
      return;
    }
    this.#host.showSheet(offered.lists[0]!.sheet);
    this.offered = offered;
    this.#host.requestUpdate();
  }

  #sayUnfetched(error: unknown): void {
    this.#host.say({ text: this.#words.say(UNFETCHED), tone: 'refused' });
    reportError(error);
  }

  #refuse(name: string, problems: readonly ElvProblem[], byPerson: boolean, total?: number): readonly ElvProblem[] {
    this.refuse(fileRefusal(this.#words, name, problems, total));
    if (byPerson) this.#host.dispatchEvent(new ElvErrorEvent(name, problems));
    return problems;
  }

  #startOrRefuse(name: string, content: Content, turn: number): readonly ElvProblem[] {
    const problems = this.start(content, turn);
    return problems.length === 0 ? [] : this.#refuse(name, problems, true);
  }

  #fetch(address: string, turn: number): ReturnType<RemoteFile['fetch']> {
    this.#fetching = turn;
    return this.#remote.fetch(address, this.#words);
  }

  async #read(file: File | NamedText): ReturnType<typeof readText> {
    this.#host.busy('file', true);
    try {
      const read = isText(file) ? { ok: true as const, ...file, notes: [], edits: [], isLoadTable: false }
        : await readText(file, this.#words);
      if (read.ok) await engineFor(read.text);
      return read;
    } finally {
      this.#host.busy('file', false);
    }
  }

  /** Reads a draft that was saved as a file; what reads it is fetched with the first one. */
  async #readDraft({ name, text }: NamedText): Promise<FileReading> {
    const words = this.#words;
    try {
      const { readDraftFile } = await import('../drafts/read-draft-file.ts');
      return readDraft(name, readDraftFile(text, words), words);
    } catch (error) {
      return this.#unfetched(error);
    }
  }

  /** A file of which the reader did not come. */
  #unfetched(error: unknown): FileReading {
    reportError(error);
    return { ok: false, problems: [{ message: this.#words.say(UNFETCHED) }], total: 1 };
  }

  #outrun(file: string): ElvProblem {
    return { message: this.#words.say('{file} was not taken, because something else was opened after it.', { file }) };
  }

  #problem({ sheet, row, key, text, problem }: FormulaProblem): ElvProblem {
    const words = this.#words;
    const place = { sheet: words.text(SCHEMA[sheet].title), row, column: words.text(columnOf(sheet, key).title) };
    return { message: words.say('{sheet}, row {row}, {column}: {text} – {problem}', { ...place, text, problem }) };
  }
}

function isText(file: File | NamedText): file is NamedText {
  return typeof file.text === 'string';
}
