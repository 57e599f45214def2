import { html, nothing, type TemplateResult } from 'lit';
import { moveDevices, runsOfWay, taggedWays, type DeviceMove, type MovePlan, type PartlyFate, type WayFate } from '../../src/rework/index.ts';
import { SCHEMA, tagOf, type SheetName } from '../../src/schedule/index.ts';
import { rowName } from '../look/index.ts';
import { onChoice, type Job, type JobHost, type JobPlan } from './job.ts';

/** As many rows are named in a sentence. */
const NAMED = 5;

/** Moves device rows to another supply or branch, with their runs and the ways of these. */
export class MoveJob implements Job {
  readonly #host: JobHost;
  #to: DeviceMove['to'] | undefined;
  readonly #partly = new Map<number, PartlyFate>();
  readonly #ways = new Map<number, WayFate>();

  constructor(host: JobHost) {
    this.#host = host;
  }

  get about(): string {
    return this.#host.words.say('Moves device rows to another supply or branch, with their runs and the ways of these.');
  }

  choices(): TemplateResult {
    const { words } = this.#host;
    const plan = this.#plan();
    return html`<label>${words.say('Move to')} <select data-option="to" data-first @change=${onChoice(this.#host, this.#aim)}>
        <option value="" ?selected=${this.#to === undefined}>–</option>${this.#targets('supplies')}${this.#targets('branches')}</select></label>
      ${plan === undefined ? nothing : html`${plan.partly.map((each) => this.#partlyChoice(each))}${this.#wholeButton(plan)}
        ${plan.shared.map((each) => this.#wayChoice(each))}`}`;
  }

  readonly #aim = (value: string): void => {
    const [sheet, ...tag] = value.split(' ');
    this.#to = value === '' ? undefined : { sheet: sheet as 'supplies' | 'branches', tag: tag.join(' ') };
    // What was decided was decided for another place.
    this.#partly.clear();
    this.#ways.clear();
  };

  #targets(sheet: 'supplies' | 'branches'): TemplateResult {
    const { words, schedule } = this.#host;
    const tags = schedule.rows(sheet).map((row) => tagOf(sheet, row)).filter((tag) => tag !== '');
    return html`<optgroup label=${words.text(SCHEMA[sheet].title)}>${tags.map((tag) => html`<option value=${`${sheet} ${tag}`}
      ?selected=${this.#to?.sheet === sheet && this.#to.tag === tag}>${tag}</option>`)}</optgroup>`;
  }

  #partlyChoice({ run, moving, staying, others }: MovePlan['partly'][number]): TemplateResult {
    const { words } = this.#host;
    const fate = this.#partly.get(run);
    const chosen = fate === undefined || fate === 'whole' ? fate ?? '' : `run ${fate.run}`;
    const decide = (value: string) => {
      if (value === '') this.#partly.delete(run);
      else this.#partly.set(run, value === 'whole' ? 'whole' : { run: value.slice('run '.length) });
    };
    return html`<label>${words.say('{run}: {n} of {all} rows', { run: this.#name('runs', run), n: moving.length, all: moving.length + staying.length })}
      <select data-option="run-${run}" @change=${onChoice(this.#host, decide)}><option value="" ?selected=${fate === undefined}>–</option>
        <option value="whole" ?selected=${chosen === 'whole'}>${words.say('The whole run moves')}</option>
        ${others.map((tag) => html`<option value="run ${tag}" ?selected=${chosen === `run ${tag}`}>${words.say('They go on {run}', { run: tag })}</option>`)}</select></label>`;
  }

  #wholeButton({ partly }: MovePlan): TemplateResult | typeof nothing {
    const moveAll = () => {
      for (const { run } of partly) this.#partly.set(run, 'whole');
      this.#host.requestUpdate();
    };
    return partly.length < 2 ? nothing
      : html`<button type="button" class="bordered" data-do="whole" @click=${moveAll}>${this.#host.words.say('Move all of these runs whole')}</button>`;
  }

  #wayChoice({ way, moving }: MovePlan['shared'][number]): TemplateResult {
    const { words, schedule } = this.#host;
    const rail = schedule.rows('supplies').find((row) => tagOf('supplies', row) === this.#to!.tag)!.id;
    const others = taggedWays(schedule, rail).map((id) => this.#name('ways', id));
    const fate = this.#ways.get(way);
    const chosen = typeof fate === 'object' ? `way ${fate.way}` : fate ?? '';
    const decide = (value: string) => {
      if (value === '') this.#ways.delete(way);
      else this.#ways.set(way, value === 'new' || value === 'none' ? value : { way: value.slice('way '.length) });
    };
    const option = (value: string, text: string) => html`<option value=${value} ?selected=${value === chosen}>${text}</option>`;
    return html`<label>${words.say('Way of {runs}', { runs: this.#names('runs', moving) })} <select data-option="way-${way}" @change=${onChoice(this.#host, decide)}>
      ${option('', '–')}${option('new', words.say('A new one like {way}', { way: this.#name('ways', way) }))}
      ${others.map((tag) => option(`way ${tag}`, tag))}${option('none', words.say('No way'))}</select></label>`;
  }

  #name(sheet: SheetName, id: number): string {
    return rowName(this.#host.schedule, { sheet, id });
  }

  #names(sheet: SheetName, ids: readonly number[]): string {
    const named = ids.slice(0, NAMED).map((id) => this.#name(sheet, id)).join(', ');
    return ids.length <= NAMED ? named : this.#host.words.say('{named} and {n} more', { named, n: ids.length - NAMED });
  }

  #plan(): MovePlan | undefined {
    const { schedule, rows: { sheet, ids } } = this.#host;
    if (this.#to === undefined) return undefined;
    const runs = sheet === 'runs' ? ids : sheet === 'ways' ? [...new Set(ids.flatMap((id) => runsOfWay(schedule, id)))] : [];
    return moveDevices(schedule, {
      devices: sheet === 'devices' ? ids : [], runs, to: this.#to, partly: this.#partly, ways: this.#ways,
    });
  }

  plan(): JobPlan {
    const { words } = this.#host;
    const plan = this.#plan();
    const tag = this.#to?.tag ?? '';
    const problems = plan === undefined ? [words.say('Choose where the rows are to go.')] : this.#problems(plan);
    const { devices = [], runs = [], ways = [], shared = [], changes = [] } = plan ?? {};
    const [device, run] = [devices[0], runs[0]];
    // A way that is made there is one too.
    const made = shared.filter(({ way }) => this.#ways.get(way) === 'new').length;
    const values = { n: devices.length, runs: runs.length, ways: ways.length + made, to: tag };
    const puts = [...this.#partly.values()].some((fate) => fate !== 'whole');
    const isBare = devices.length === 0;
    return {
      label: isBare ? words.say('Move of {runs, plural, one {# run} other {# runs}} to {to}', values)
        : words.say('Move of {n, plural, one {# device row} other {# device rows}} to {to}', values),
      sum: isBare ? words.say('{runs, plural, one {# run goes} other {# runs go}} to {to}, with {ways, plural, =0 {no way} one {# way} other {# ways}}.', values)
        : words.say('{n, plural, one {# device row goes} other {# device rows go}} to {to}, with {runs, plural, =0 {no run} one {# run} other {# runs}} and {ways, plural, =0 {no way} one {# way} other {# ways}}.', values),
      note: [...this.#staying(plan), ...puts ? [words.say('Rows that are put on another run lose their distance, which is not known there: they count at its far end until it is entered.')] : []],
      problems, changes,
      place: device !== undefined ? { sheet: 'devices', id: device, key: this.#to!.sheet === 'supplies' ? 'rail' : 'branch' }
        : run === undefined ? undefined : { sheet: 'runs', id: run, key: 'rail' },
    };
  }

  /** Says of what was selected what stays, and why. */
  #staying(plan: MovePlan | undefined): string[] {
    const { words } = this.#host;
    const { devices = [], runs = [] } = plan?.staying ?? {};
    const isRail = this.#to?.sheet === 'supplies';
    const of = { n: devices.length, named: this.#names('devices', devices) };
    const ofRuns = { n: runs.length, named: this.#names('runs', runs) };
    return [
      ...devices.length === 0 ? [] : [isRail
        ? words.say('{n, plural, one {# selected row is on no rail and stays} other {# selected rows are on no rail and stay}}: {named}. Enter the rail in their cells, or share them out.', of)
        : words.say('{n, plural, one {# selected row is on no branch and stays} other {# selected rows are on no branch and stay}}: {named}. Enter the branch in their cells, or share them out.', of)],
      ...runs.length === 0 ? [] : [isRail
        ? words.say('{n, plural, one {# run is on no rail and stays} other {# runs are on no rail and stay}}: {named}. Enter its rail or its way in the cells of the run.', ofRuns)
        : words.say('{n, plural, one {# run is on no branch and stays} other {# runs are on no branch and stay}}: {named}. Enter the branch in the cells of the run.', ofRuns)],
    ];
  }

  #problems({ devices, runs, partly, shared }: MovePlan): string[] {
    const { words, schedule, rows: { sheet, ids } } = this.#host;
    const { tag: to, sheet: of } = this.#to!;
    const key = of === 'supplies' ? 'rail' : 'branch';
    const isOnAny = sheet === 'devices' && ids.some((id) => schedule.target('devices', id, key) >= 0);
    if (devices.length + runs.length === 0 && !isOnAny) {
      if (sheet === 'ways' && ids.every((id) => runsOfWay(schedule, id).length === 0)) {
        return [words.say('None of these ways feeds a run. Enter another rail in their cells.')];
      }
      return [of === 'supplies'
        ? words.say('None of these rows is on a rail yet. Enter it in their cells, or share them out.')
        : words.say('None of these rows is on a branch yet. Enter it in their cells, or share them out.')];
    }
    return [
      ...partly.filter(({ run }) => !this.#partly.has(run)).map(({ run, moving, staying, others }) => {
        const values = { run: this.#name('runs', run), n: moving.length, all: moving.length + staying.length, to };
        return others.length === 0
          ? words.say('{run}: {n, plural, one {# of its {all} rows is} other {# of its {all} rows are}} to go to {to}, which has no other run for them. Choose that the whole run moves, or add a run there first.', values)
          : words.say('{run}: {n, plural, one {# of its {all} rows is} other {# of its {all} rows are}} to go to {to}. Choose whether the whole run moves, or on which run of {to} they go.', values);
      }),
      ...shared.filter(({ way }) => !this.#ways.has(way)).map(({ way, moving, staying }) => words.say(
        'Way {way} also feeds {staying} and stays. Choose the way that is to feed {moving} on {to}.',
        { way: this.#name('ways', way), staying: this.#names('runs', staying), moving: this.#names('runs', moving), to })),
    ];
  }
}
