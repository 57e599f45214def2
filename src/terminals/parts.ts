import type { Workbook } from '../engine/index.ts';
import { grouped, SCHEMA, tagOf, type ScheduleDocument, type SheetName } from '../schedule/index.ts';

/** What of the figures is read here. */
export type Figures = Pick<Workbook, 'value'>;

/** Connections that one conductor feeds, looped from each to the next. */
export interface Chain {
  readonly enclosure: string;
  readonly connections: string[];
  /** Current [A] that each draws; `null` where it is not known. */
  readonly amps: (number | null)[];
  /** Units of supplies among them, as `L1:` and `L1:2/`: each has a neutral and a protective conductor of its own. */
  readonly units: string[];
}

/** Units of a supply that are listed one by one. A supply of more is a slip of the pen, or not wired from this list. */
const MOST_UNITS = 20;

/** The parts of a panel as the layout of terminals reads them: by tag, each with where it is mounted. */
export class Parts {
  readonly #document: ScheduleDocument;
  readonly #figures: Figures;
  readonly #byTag = new Map<SheetName, Map<string, number>>();
  #chains: Map<string, Chain[]> | undefined;
  #busRuns: Map<string, number[]> | undefined;
  /** Rows with a tag by the rail that they name. */
  #onRails: ReadonlyMap<'ways' | 'outputs', ReadonlyMap<string, readonly number[]>> | undefined;

  constructor(document: ScheduleDocument, figures: Figures) {
    this.#document = document;
    this.#figures = figures;
  }

  rows(sheet: SheetName): number[] {
    return this.#document.rows(sheet).map(({ id }) => id);
  }

  tagKey(sheet: SheetName): string {
    return SCHEMA[sheet].tag;
  }

  /** Id of the first row with a tag; `undefined` where there is none. */
  find(sheet: SheetName, tag: string): number | undefined {
    let tags = this.#byTag.get(sheet);
    if (tags === undefined) {
      tags = new Map();
      for (const row of this.#document.rows(sheet)) {
        const each = tagOf(sheet, row);
        if (each !== '' && !tags.has(each)) tags.set(each, row.id);
      }
      this.#byTag.set(sheet, tags);
    }
    return tags.get(tag);
  }

  /** A text of a row, as entered or as it follows; empty where it is not known. */
  text(sheet: SheetName, id: number, key: string): string {
    const value = this.#figures.value(sheet, id, key);
    return typeof value === 'string' ? value : '';
  }

  number(sheet: SheetName, id: number, key: string): number | null {
    const value = this.#figures.value(sheet, id, key);
    return typeof value === 'number' ? value : null;
  }

  /** Whether the supply of a rail is mounted in an enclosure, as far as that is known. */
  isRailIn(rail: string, enclosure: string): boolean {
    return ['', enclosure].includes(this.#of('supplies', rail, 'enclosure'));
  }

  enclosureOfBranch(branch: string): string {
    return this.#of('branches', branch, 'enclosure');
  }

  enclosureOfWay(way: string): string {
    return this.#of('ways', way, 'enclosure');
  }

  /** Where the cable of a run begins: where its way is mounted, its supply, or the coupler of its branch. */
  enclosureOfRun(id: number): string {
    const places = [
      this.enclosureOfWay(this.text('runs', id, 'way')), this.#of('supplies', this.text('runs', id, 'rail'), 'enclosure'),
      this.enclosureOfBranch(this.text('runs', id, 'branch')),
    ];
    return places.find((each) => each !== '') ?? '';
  }

  enclosureOfOutput(id: number): string {
    const module = this.#of('modules', this.text('outputs', id, 'module'), 'enclosure');
    return module === '' ? this.#of('supplies', this.text('outputs', id, 'rail'), 'enclosure') : module;
  }

  /** Cross-section [mm²] of the cores of a run. */
  sizeOfRun(id: number): number | null {
    const conductor = this.find('conductors', this.text('runs', id, 'conductor'));
    return conductor === undefined ? null : this.number('conductors', conductor, 'size');
  }

  ratingOfWay(way: string): number | null {
    const id = this.find('ways', way);
    return id === undefined ? null : this.number('ways', id, 'rated');
  }

  /** Current [A] that a supply gives for ever: what all its units are rated for. */
  given(rail: string): number | null {
    const id = this.find('supplies', rail);
    if (id === undefined) return null;
    const [rated, units] = [this.number('supplies', id, 'rated'), this.number('supplies', id, 'units')];
    return rated === null || units === null ? null : rated * units;
  }

  /**
   * What the connections of each unit of a supply begin with: those of the first with the tag and a colon, those of
   * the second with `2/` behind it.
   */
  unitsOf(rail: string): string[] {
    const units = this.find('supplies', rail) === undefined ? null : this.number('supplies', this.find('supplies', rail)!, 'units');
    const count = units === null || units > MOST_UNITS ? 1 : units;
    return Array.from({ length: count }, (_none, place) => place === 0 ? `${rail}:` : `${rail}:${place + 1}/`);
  }

  /** Whether a fuse stands between the plus of a supply and all that it feeds. */
  isFused(rail: string): boolean {
    const id = this.find('supplies', rail);
    return id !== undefined && this.number('supplies', id, 'fuse') !== null;
  }

  /** The connection from which all is fed that hangs on a rail: the plus of its supply, or its fuse. */
  plusOf(rail: string): string {
    return this.isFused(rail) ? `${rail}:F/2` : `${rail}:+`;
  }

  /** Whether the units of a supply stand in for each other: then something decouples them. */
  isRedundant(rail: string): boolean {
    const id = this.find('supplies', rail);
    return id !== undefined && this.#figures.value('supplies', id, 'redundant') === true;
  }

  /**
   * What each unit of a supply has of a current [A] of all, for a loop through them. Of those that stand in for each
   * other any one may have all: the last is counted with it, behind every link.
   */
  shared(rail: string, amps: number | null): { readonly units: string[]; readonly drawn: (number | null)[] } {
    const units = this.unitsOf(rail);
    const shareOf = (place: number) => this.isRedundant(rail) ? Number(place === units.length - 1) : 1 / units.length;
    return { units, drawn: units.map((_unit, place) => amps === null ? null : amps * shareOf(place)) };
  }

  /** Current [A] that what stands behind an output lets through for ever. */
  ratingBehind(feed: string, rail: string): number | null {
    if (rail !== '') return this.given(rail);
    const id = this.find('feeds', feed);
    return id === undefined ? null : this.number('feeds', id, 'rated');
  }

  /** Whether a row has the cable that a text names: a run, an output, a branch or a feed. */
  isCable(tag: string): boolean {
    return (['runs', 'outputs', 'branches', 'feeds'] as const).some((sheet) => this.find(sheet, tag) !== undefined);
  }

  runsOfBranch(branch: string): readonly number[] {
    this.#busRuns ??= grouped(
      this.rows('runs').filter((id) => this.text('runs', id, 'run') !== ''), (id) => this.text('runs', id, 'branch'));
    return this.#busRuns.get(branch) ?? [];
  }

  /** Connections that are looped on one line of a feed, by enclosure: supplies, then those of each relay module. */
  chainsOfFeed(feed: string): readonly Chain[] {
    this.#chains ??= this.#gatherChains();
    return this.#chains.get(feed) ?? [];
  }

  /**
   * What hangs on the plus of a rail, in each enclosure that has some of it: the inputs of its ways, then the commons
   * of the outputs that switch its loads.
   */
  chainsOfRail(rail: string): readonly Pick<Chain, 'enclosure' | 'connections' | 'amps'>[] {
    this.#onRails ??= new Map((['ways', 'outputs'] as const).map((sheet) => [sheet, grouped(
      this.rows(sheet).filter((id) => this.text(sheet, id, this.tagKey(sheet)) !== ''), (id) => this.text(sheet, id, 'rail'))]));
    const chains = new Map<string, Map<string, number | null>>();
    const add = (enclosure: string, connection: string, amps: number | null): void => {
      const chain = chains.get(enclosure) ?? new Map<string, number | null>();
      chains.set(enclosure, chain.set(connection, sum([chain.get(connection) ?? 0, amps])));
    };
    for (const id of this.#onRails.get('ways')!.get(rail) ?? []) {
      add(this.text('ways', id, 'enclosure'), `${this.text('ways', id, 'way')}:1`, this.number('ways', id, 'demand'));
    }
    for (const id of this.#onRails.get('outputs')!.get(rail) ?? []) {
      add(this.enclosureOfOutput(id), this.#commonOf(id), this.number('outputs', id, 'current'));
    }
    return [...chains].map(([enclosure, chain]) =>
      ({ enclosure, connections: [...chain.keys()], amps: [...chain.values()] }));
  }

  /** Current [A] of all supplies of the feed of one that are mounted beside it; `null` where one is not known. */
  drawnBySupplies(id: number): number | null {
    const of = (each: number) => JSON.stringify([this.text('supplies', each, 'feed'), this.text('supplies', each, 'enclosure')]);
    return sum(this.rows('supplies').filter((each) => of(each) === of(id)).map((each) => this.number('supplies', each, 'inputCurrent')));
  }

  /** Current [A] of all outputs of a module that are looped with this one; `null` where one is not known. */
  drawnByChain(id: number): number | null {
    const module = this.text('outputs', id, 'module');
    const feed = this.text('outputs', id, 'feed');
    const chain = module === '' ? [id] : this.rows('outputs').filter((each) =>
      this.text('outputs', each, 'module') === module && this.text('outputs', each, 'feed') === feed
      && this.text('outputs', each, 'rail') === '');
    return sum(chain.map((each) => this.number('outputs', each, 'current')));
  }

  #gatherChains(): Map<string, Chain[]> {
    const chains = new Map<string, Chain>();
    const ofFeed = new Map<string, Chain[]>();
    const add = (feed: string, enclosure: string, part: string, connection: string, amps: number | null): Chain => {
      const key = JSON.stringify([feed, enclosure, part]);
      let chain = chains.get(key);
      if (chain === undefined) {
        chains.set(key, chain = { enclosure, connections: [], amps: [], units: [] });
        ofFeed.set(feed, [...ofFeed.get(feed) ?? [], chain]);
      }
      const last = chain.amps.length - 1;
      // The outputs of a common side draw through one connection.
      if (chain.connections[last] === connection) chain.amps[last] = sum([chain.amps[last]!, amps]);
      else {
        chain.connections.push(connection);
        chain.amps.push(amps);
      }
      return chain;
    };
    for (const id of this.rows('supplies')) {
      const [feed, rail] = [this.text('supplies', id, 'feed'), this.text('supplies', id, 'rail')];
      if (feed === '' || rail === '') continue;
      const enclosure = this.text('supplies', id, 'enclosure');
      const { units, drawn } = this.shared(rail, this.number('supplies', id, 'inputCurrent'));
      for (const [place, unit] of units.entries()) add(feed, enclosure, 'supplies', `${unit}L`, drawn[place]!).units.push(unit);
    }
    for (const id of this.rows('outputs')) {
      const [feed, output] = [this.text('outputs', id, 'feed'), this.text('outputs', id, 'output')];
      if (feed === '' || output === '' || this.text('outputs', id, 'rail') !== '') continue;
      const module = this.text('outputs', id, 'module');
      const part = module === '' ? `output ${output}` : `module ${module}`;
      add(feed, this.enclosureOfOutput(id), part, this.#commonOf(id), this.number('outputs', id, 'current'));
    }
    return ofFeed;
  }

  /** The connection through which an output is fed: the common side of its module, or its own. */
  #commonOf(id: number): string {
    const module = this.text('outputs', id, 'module');
    return this.#hasCommon(module) ? `${module}:C` : `${this.text('outputs', id, 'output')}:11`;
  }

  /** Whether the outputs of a module have one common side, which one conductor feeds. */
  #hasCommon(module: string): boolean {
    const id = this.find('modules', module);
    return id !== undefined && this.number('modules', id, 'common') !== null;
  }

  #of(sheet: SheetName, tag: string, key: string): string {
    const id = this.find(sheet, tag);
    return id === undefined ? '' : this.text(sheet, id, key);
  }
}

function sum(amps: readonly (number | null)[]): number | null {
  return amps.includes(null) ? null : (amps as number[]).reduce((all, each) => all + each, 0);
}
