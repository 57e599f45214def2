import { html, type TemplateResult } from 'lit';
import { readCell } from '../../src/editing/index.ts';
import { alongRun, splitRun, taggedWays, type RunSplit, type SplitPlan, type SplitProblem, type SplitWay } from '../../src/rework/index.ts';
import { columnOf, tagOf, withUnit, type InputColumn } from '../../src/schedule/index.ts';
import { message } from '../../src/words/index.ts';
import { rowName } from '../look/index.ts';
import { onChoice, type Job, type JobHost, type JobPlan } from './job.ts';

/** What is said of a run that cannot be parted so. */
const PROBLEMS: Readonly<Record<SplitProblem, string>> = {
  'two-ways': message('{run} has two ways. Empty the second one first.'),
  'none-goes': message('Choose the first device row that goes on the new run.'),
  'none-stays': message('No device row would stay on {run}. Choose one that is farther along it.'),
  'no-tag': message('Give the new run a tag.'),
  'tag-taken': message('There is a run {tag} already. Give the new one another tag.'),
  'no-length': message('Enter both lengths in m.'),
  'too-short': message('A run has to reach the last of its device rows. Enter greater lengths, or correct the distances.'),
};

/** Parts a run in two at a device row. */
export class SplitJob implements Job {
  readonly #host: JobHost;
  readonly #run: number;
  #chosen: Omit<RunSplit, 'run'>;
  /** Lengths that cannot be read: what was typed, and what is wrong with it. */
  readonly #wrong = new Map<'length' | 'rest', { readonly text: string; readonly problem: string }>();

  constructor(host: JobHost) {
    this.#host = host;
    const { schedule, rows: { sheet, ids } } = host;
    this.#run = sheet === 'runs' ? ids[0] ?? -1 : schedule.target('devices', ids[0] ?? -1, 'run');
    const along = this.#run < 0 ? [] : alongRun(schedule, this.#run);
    const from = sheet === 'devices' ? along.find((id) => ids.includes(id)) : along[Math.ceil(along.length / 2)];
    this.#chosen = { from: from ?? -1 };
  }

  get about(): string {
    return this.#host.words.say('Parts a run in two at a device row: from there on they go on a run of their own, which begins where the other does.');
  }

  choices(): TemplateResult {
    const { words, schedule } = this.#host;
    const plan = this.#plan();
    if (plan === undefined) return html``;
    const own = schedule.target('runs', this.#run, 'way');
    const rail = own < 0 ? -1 : schedule.target('ways', own, 'rail');
    const others = rail < 0 ? [] : taggedWays(schedule, rail).filter((id) => id !== own);
    const { way = 'same' } = this.#chosen;
    const chosen = typeof way === 'object' ? `way ${way.way}` : way;
    const option = (value: string, text: string) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`;
    const onWay = (value: string) => {
      const fate: SplitWay = value === 'same' || value === 'new' ? value : { way: value.slice('way '.length) };
      this.#chosen = { ...this.#chosen, way: fate };
    };
    return html`<label>${words.say('First device row that goes')} <select data-option="from" data-first @change=${onChoice(this.#host, (value) => { this.#from(Number(value)); })}>
        ${alongRun(schedule, this.#run).map((id) => html`<option value=${id} ?selected=${id === this.#chosen.from}>${this.#place(id)}</option>`)}</select></label>
      <label>${words.say('Tag of the new run')} <input data-option="tag" .value=${plan.tag} @change=${onChoice(this.#host, (tag) => { this.#chosen = { ...this.#chosen, tag: tag.trim() }; })}></label>
      <label>${words.say('Its way')} <select data-option="way" @change=${onChoice(this.#host, onWay)}>
        ${option('same', own < 0 ? words.say('No way') : words.say('The same: {way}', { way: this.#name('ways', own) }))}
        ${own < 0 ? '' : option('new', words.say('A new one like {way}', { way: this.#name('ways', own) }))}
        ${others.map((id) => option(`way ${this.#name('ways', id)}`, this.#name('ways', id)))}</select></label>
      <label>${words.say('Its length [m]')} <input data-option="length" inputmode="decimal" .value=${this.#metres('length', plan)} @change=${onChoice(this.#host, (text) => { this.#read('length', text); })}></label>
      <label>${words.say('Length of {run} then [m]', { run: this.#name('runs', this.#run) })} <input data-option="rest" inputmode="decimal" .value=${this.#metres('rest', plan)} @change=${onChoice(this.#host, (text) => { this.#read('rest', text); })}></label>`;
  }

  /** What was proposed follows another place; what was entered stays. */
  #from(from: number): void {
    this.#chosen = { ...this.#chosen, from };
  }

  #read(of: 'length' | 'rest', text: string): void {
    const { schedule, words } = this.#host;
    const read = readCell({ schedule, sheet: 'runs', words }, this.#run, columnOf('runs', 'length') as InputColumn, text);
    if (read.ok) this.#wrong.delete(of);
    else this.#wrong.set(of, { text, problem: read.problem });
    // A formula of the new run would be one of cells that are not there yet.
    this.#chosen = { ...this.#chosen, [of]: read.ok && typeof read.value === 'number' ? read.value : null };
  }

  #metres(of: 'length' | 'rest', { [of]: length }: SplitPlan): string {
    return this.#wrong.get(of)?.text ?? (length === null ? '' : this.#host.words.number(length));
  }

  /** A device row with its place along the run. */
  #place(id: number): string {
    const { schedule, words } = this.#host;
    const distance = schedule.value('devices', id, 'distance');
    const name = this.#name('devices', id);
    return distance === null ? words.say('{ref} at its end', { ref: name })
      : words.say('{ref} at {distance}', { ref: name, distance: withUnit(columnOf('devices', 'distance'), distance, words) });
  }

  #name(sheet: 'runs' | 'ways' | 'devices', id: number): string {
    return rowName(this.#host.schedule, { sheet, id });
  }

  #plan(): SplitPlan | undefined {
    const { schedule } = this.#host;
    return schedule.document.row('runs', this.#run) === undefined ? undefined
      : splitRun(schedule, { run: this.#run, ...this.#chosen });
  }

  plan(): JobPlan {
    const { words, schedule } = this.#host;
    const plan = this.#plan();
    if (plan === undefined) {
      const problem = words.say('None of these rows is on a run. Select device rows of a run, or a run.');
      return { label: '', sum: '', problems: [problem], changes: [], place: undefined };
    }
    const { going, tag, way, changes, problem, made } = plan;
    const run = tagOf('runs', schedule.document.row('runs', this.#run)!);
    const values = { n: going.length, tag, run, way: way ?? '', hasWay: way === null ? 'no' : 'yes' };
    return {
      label: words.say('Parting of {run}', { run }),
      sum: words.say('{n, plural, one {# device row goes} other {# device rows go}} from {run} on {tag}{hasWay, select, yes {, from way {way}} other {}}.', values),
      problems: this.#wrong.size > 0 ? [...this.#wrong.values()].map((each) => each.problem)
        : problem === undefined ? [] : [words.say(PROBLEMS[problem], { run, tag })],
      changes, place: changes.length === 0 ? undefined : { sheet: 'runs', id: made, key: 'run' },
    };
  }
}
