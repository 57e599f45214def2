import { BREAKER_CURVES } from '../../electrical/index.ts';
import type { PanelChoice } from '../../engine/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { columnOf, formatCell, grouped, type SheetName } from '../../schedule/index.ts';
import { figureText, nameOf, numberAt } from '../pictures/words.ts';
import { missingNode, plain, quiet, type DrawnNode } from './drawn-node.ts';
import type { Piece } from './flow-text.ts';
import { Gathered } from './gathered.ts';
import { loadsNode } from './loads.ts';
import type { SymbolName } from './symbols.ts';

const NO_BREAK = '\u00a0';
/** Conductors there and back. */
const CONDUCTORS_OF_A_PAIR = 2;

/**
 * What a panel feeds, from the mains to the devices: each feed, supply, way, run and output once. What names a tag that
 * is not there, or none, stands under a node that says so.
 * @param schedule as it is in the panel, see `panelView`
 */
export function oneLineTree(schedule: LoadSchedule, panel: PanelChoice): DrawnNode[] {
  return new OneLine(new Gathered(schedule, panel)).roots();
}

class OneLine {
  readonly #rows: Gathered;
  readonly #schedule: LoadSchedule;
  /** Supplies and feeds of other panels on which something of this one hangs. */
  readonly #supplies: readonly number[];
  readonly #feeds: readonly number[];

  constructor(rows: Gathered) {
    this.#rows = rows;
    const schedule = this.#schedule = rows.schedule;
    const named = (sheet: SheetName, key: string) =>
      rows.rows(sheet).map((id) => schedule.target(sheet, id, key)).filter((id) => id >= 0);
    this.#supplies = [...new Set([
      ...rows.rows('supplies'), ...named('ways', 'rail'), ...named('runs', 'rail'), ...named('outputs', 'rail'),
      ...named('devices', 'rail'),
    ])];
    const used = new Set([
      ...this.#supplies.map((id) => schedule.target('supplies', id, 'feed')).filter((id) => id >= 0), ...named('outputs', 'feed'),
    ]);
    // A feed that stands in no panel is drawn where something hangs on it.
    const isUnused = (id: number) =>
      (['supplies', 'outputs'] as const).every((sheet) => schedule.members(sheet, 'feed', id).length === 0);
    const own = rows.rows('feeds').filter((id) => rows.panel !== null || used.has(id) || isUnused(id));
    this.#feeds = [...new Set([...own, ...used])];
  }

  roots(): DrawnNode[] {
    const { words } = this.#schedule;
    const onFeed = grouped(this.#supplies, (id) => this.#schedule.target('supplies', id, 'feed'));
    return [
      ...this.#feeds.map((id) => this.#feed(id, onFeed.get(id) ?? [])),
      ...this.#astray('supplies', 'feed', onFeed.get(-1) ?? [], words.say('Feed not known'), (ids) => ids.map((id) => this.#supply(id))),
      ...this.#astray('ways', 'rail', this.#rows.on('ways', 'rail', -1), words.say('Rail not known'), (ids) => ids.map((id) => this.#way(id))),
      ...this.#astray('runs', 'rail', this.#loose(-1), words.say('Rail not known'), (ids) => this.#runsWithoutWay(ids)),
      ...this.#astray('outputs', 'feed', this.#rows.on('outputs', 'feed', -1)
        .filter((id) => this.#schedule.target('outputs', id, 'rail') < 0), words.say('Feed not known'), (ids) => this.#outputs(ids)),
      ...this.#emptyModules(),
    ];
  }

  /** Nodes of what is named and not there, one for each tag, with what names it. */
  #astray(
    sheet: SheetName, key: string, ids: readonly number[], unnamed: string,
    draw: (ids: readonly number[]) => DrawnNode[],
  ): DrawnNode[] {
    return [...this.#rows.astray(sheet, key, ids)].map(([tag, of]): DrawnNode => {
      const node = missingNode(tag, draw(of), this.#schedule.words);
      return tag === '' ? { ...node, name: unnamed, standing: null, about: [] } : node;
    });
  }

  #feed(id: number, supplies: readonly number[]): DrawnNode {
    const outputs = this.#rows.on('outputs', 'feed', id).filter((each) => this.#schedule.target('outputs', each, 'rail') < 0);
    return {
      ...this.#named('feeds', id), symbols: [{ name: 'breaker' }, { name: 'earth' }],
      about: [this.#rating('feeds', id, 'curve'), quiet(this.#entered('feeds', id, 'voltage', 'V')), quiet(this.#rows.otherPanel('feeds', id))],
      figures: [this.#demand('feeds', id)],
      children: [...supplies.map((each) => this.#supply(each)), ...this.#outputs(outputs)],
    };
  }

  #supply(id: number): DrawnNode {
    const { words } = this.#schedule;
    const text = this.#figure('supplies', id);
    const [rated, units, fuse] = ['rated', 'units', 'fuse'].map((key) => numberAt(this.#schedule, 'supplies', id, key));
    const size = rated === null ? words.say('rating not known') : this.#entered('supplies', id, 'rated', 'A');
    const hasBattery = ['battery', 'standbyHours'].some((key) => (numberAt(this.#schedule, 'supplies', id, key) ?? 0) > 0);
    const loose = this.#rows.on('devices', 'rail', id).filter((each) => this.#schedule.target('devices', each, 'run') < 0);
    return {
      ...this.#named('supplies', id),
      symbols: [
        { name: 'converter' }, ...hasBattery ? [{ name: 'battery' as const }] : [],
        ...fuse === null ? [] : [{ name: this.#protection('supplies', id, 'fuseKind', 'fuse') }],
      ],
      about: [
        plain(this.#entered('supplies', id, 'voltage', 'V')), plain((units ?? 1) > 1 ? `${words.number(units!)} × ${size}` : size),
        ...this.#schedule.value('supplies', id, 'redundant') === true ? [quiet(words.say('one unit redundant'))] : [],
        quiet(this.#choice('supplies', id, 'purpose')), quiet(this.#rows.otherPanel('supplies', id)),
      ],
      figures: [
        plain(words.say('{amount} of {most}', { amount: text('demand'), most: text('usable') })), plain(this.#known('supplies', id, 'loading')),
        ...fuse === null ? [] : [plain(words.say('fuse {rating}', { rating: this.#rating('supplies', id, 'fuseKind', 'fuse').text }))],
        ...hasBattery ? [plain(words.say('battery {capacity}', { capacity: text('battery') }))] : [],
      ],
      children: [
        ...this.#rows.on('ways', 'rail', id).map((each) => this.#way(each)),
        ...this.#runsWithoutWay(this.#loose(id)),
        ...this.#outputs(this.#rows.on('outputs', 'rail', id)),
        ...loose.length === 0 ? [] : [loadsNode(this.#schedule, loose, words.say('on no run'))],
      ],
    };
  }

  #way(id: number): DrawnNode {
    const { words } = this.#schedule;
    const seconds = this.#rows.on('runs', 'secondWay', id)
      .filter((each) => this.#schedule.target('runs', each, 'way') !== id);
    const runs = this.#rows.on('runs', 'way', id);
    return {
      ...this.#named('ways', id), symbols: [{ name: this.#protection('ways', id, 'kind', 'rated') }], feeds: 'runs',
      about: [this.#rating('ways', id, 'kind'), quiet(this.#rows.otherPanel('ways', id))],
      figures: [this.#demand('ways', id)],
      children: [
        ...runs.map((each) => this.#run(each)),
        ...seconds.map((each): DrawnNode => ({
          name: nameOf(this.#schedule, 'runs', each), symbols: [{ name: 'elsewhere' }], standing: null, children: [],
          about: [quiet(words.say('is drawn at its first way'))], figures: [],
        })),
        ...runs.length + seconds.length > 0 ? [] : [this.#note(words.say('no run'))],
      ],
    };
  }

  /** Runs on a rail that name no way that is there. */
  #loose(rail: number): number[] {
    return this.#rows.on('runs', 'rail', rail).filter((id) => this.#schedule.target('runs', id, 'way') < 0);
  }

  #runsWithoutWay(ids: readonly number[]): DrawnNode[] {
    const { words } = this.#schedule;
    return [...this.#rows.astray('runs', 'way', ids)].flatMap(([tag, runs]): DrawnNode[] => tag === ''
      ? runs.map((id) => ({
        name: '', symbols: [{ name: 'none' }], feeds: 'runs', about: [quiet(words.say('without a way'))], figures: [], standing: null,
        children: [this.#run(id)],
      }))
      : [{ ...missingNode(tag, runs.map((id) => this.#run(id)), words), feeds: 'runs' }]);
  }

  #run(id: number): DrawnNode {
    const { words } = this.#schedule;
    const pairs = numberAt(this.#schedule, 'runs', id, 'pairs');
    const [conductor, second] = ['conductor', 'secondWay'].map((key) => this.#rows.text('runs', id, key));
    return {
      ...this.#named('runs', id),
      symbols: [{ name: 'conductor', figure: pairs === null ? '?' : words.number(CONDUCTORS_OF_A_PAIR * pairs) }], feeds: 'loads',
      about: [
        plain(conductor === '' ? words.say('conductor not known') : conductor!),
        plain(this.#known('runs', id, 'length', () => words.say('length not known'))),
        ...second === '' ? [] : [quiet(words.say('fed from {way} too', { way: second! }))],
      ],
      figures: [
        plain(this.#known('runs', id, 'current', () => words.say('current not known'))),
        plain(this.#known('runs', id, 'endVoltage', () => words.say('end voltage not known'), (voltage) => words.say('{voltage} at its end', { voltage }))),
      ],
      children: [loadsNode(this.#schedule, this.#rows.on('devices', 'run', id), '')],
    };
  }

  /** Outputs by their modules, in the order in which these come first; a module is drawn on each of their feeds. */
  #outputs(ids: readonly number[]): DrawnNode[] {
    const byModule = grouped(ids, (id): number | string => {
      const module = this.#schedule.target('outputs', id, 'module');
      return module >= 0 ? module : this.#rows.text('outputs', id, 'module');
    });
    return [...byModule].flatMap(([module, of]): DrawnNode[] => {
      const children = of.map((id) => this.#output(id));
      if (module === '') return children;
      return [typeof module === 'number' ? this.#module(module, children) : missingNode(module, children, this.#schedule.words)];
    });
  }

  #module(id: number, children: readonly DrawnNode[]): DrawnNode {
    const { words } = this.#schedule;
    const text = this.#figure('modules', id);
    const common = numberAt(this.#schedule, 'modules', id, 'common');
    return {
      name: nameOf(this.#schedule, 'modules', id), standing: this.#schedule.standing('modules', id), symbols: [{ name: 'coil' }],
      about: [
        plain(common === null ? words.say('relay module') : words.say('relay module, common side {rating}', { rating: text('common') })),
        quiet(this.#rows.otherPanel('modules', id)),
      ],
      figures: [plain(words.say('all outputs together {current}', { current: text('current') }))], children,
    };
  }

  /** Modules of the panel of which no output is entered. */
  #emptyModules(): DrawnNode[] {
    const { words } = this.#schedule;
    return this.#rows.rows('modules').filter((id) => this.#schedule.members('outputs', 'module', id).length === 0)
      .map((id) => this.#module(id, [this.#note(words.say('no outputs'))]));
  }

  #output(id: number): DrawnNode {
    const { words } = this.#schedule;
    const text = this.#figure('outputs', id);
    const [load, area, contact] = ['load', 'area', 'contact'].map((key) => this.#rows.text('outputs', id, key));
    const [qty, power] = ['qty', 'power'].map((key) => numberAt(this.#schedule, 'outputs', id, key));
    const each = power === null ? '' : text('power');
    return {
      ...this.#named('outputs', id), symbols: [{ name: 'contact' }], feeds: 'loads',
      about: [
        plain(contact === '' ? words.say('contact not known') : contact!),
        plain(this.#choice('outputs', id, 'kind') || words.say('kind of load not known')),
      ],
      figures: [
        plain(this.#known('outputs', id, 'current', () => words.say('current not known'))),
        plain(this.#known('outputs', id, 'loading')),
      ],
      children: [{
        name: '', symbols: [{ name: 'load' }], standing: null, children: [], about: [plain(load === '' ? words.say('load not known') : load!)],
        figures: [plain((qty ?? 1) === 1 ? each : `${words.number(qty!)} × ${each}`), quiet(area!)],
      }],
    };
  }

  #note(text: string): DrawnNode {
    return { name: '', symbols: [{ name: 'none' }], about: [quiet(text)], figures: [], standing: null, children: [] };
  }

  #named(sheet: SheetName, id: number): Pick<DrawnNode, 'row' | 'name' | 'standing'> {
    const schedule = this.#schedule;
    return { row: { sheet, id }, name: nameOf(schedule, sheet, id), standing: schedule.standing(sheet, id) };
  }

  #figure(sheet: SheetName, id: number): (key: string) => string {
    return (key) => figureText(this.#schedule, sheet, id, key);
  }

  /** A figure in the words around it, or what to say where it is not known. */
  #known(
    sheet: SheetName, id: number, key: string, unknown = () => this.#schedule.words.say('loading not known'),
    within = (text: string) => text,
  ): string {
    const schedule = this.#schedule;
    return schedule.value(sheet, id, key) === null ? unknown() : within(figureText(schedule, sheet, id, key));
  }

  /** Demand and loading of what protects a way. */
  #demand(sheet: 'feeds' | 'ways', id: number): Piece {
    const { words } = this.#schedule;
    const demand = figureText(this.#schedule, sheet, id, 'demand');
    return plain(words.say('{demand}, {loading}', { demand, loading: this.#known(sheet, id, 'loading') }));
  }

  /** What protects a way, as it is ordered: C 10 A. */
  #rating(sheet: SheetName, id: number, kind: string, rated = 'rated'): Piece {
    const { words } = this.#schedule;
    const amps = numberAt(this.#schedule, sheet, id, rated);
    return plain([
      this.#choice(sheet, id, kind) || words.say('kind not known'),
      amps === null ? words.say('rating not known') : this.#entered(sheet, id, rated, 'A'),
    ].join(' '));
  }

  /** A figure as it is entered, without decimals that say nothing: 24 V. */
  #entered(sheet: SheetName, id: number, key: string, unit: string): string {
    const { words } = this.#schedule;
    const value = numberAt(this.#schedule, sheet, id, key);
    return value === null ? words.say('not known') : `${words.number(value)}${NO_BREAK}${unit}`;
  }

  #choice(sheet: SheetName, id: number, key: string): string {
    return formatCell(columnOf(sheet, key), this.#schedule.value(sheet, id, key), this.#schedule.words, 'show');
  }

  #protection(sheet: SheetName, id: number, kind: string, rated: string): SymbolName {
    const value = this.#schedule.value(sheet, id, kind);
    if (value === null) return rated === 'fuse' ? 'fuse' : 'unknown';
    if (value === 'electronic') return 'electronic';
    return (BREAKER_CURVES as readonly unknown[]).includes(value) ? 'breaker' : 'fuse';
  }
}
