import type { DeviceColumns } from './typed-figures.ts';
import { EMPTY, HIDDEN, NAMES_NONE, RETRIES, type Tagged } from './typed-tables.ts';

/** What every check of the workload may find, by rule, at nothing yet. */
const nothing = () => ({
  'device-quantity-missing': 0, 'device-draw-missing': 0, 'device-over-supply': 0,
  'device-over-voltage': 0, 'device-under-voltage': 0, 'device-other-voltage': 0, 'device-start-unknown': 0,
  'device-without-rail': 0, 'device-nodes-missing': 0, 'tag-used-twice': 0, 'tag-names-nothing': 0,
  'number-out-of-range': 0, 'hidden-character': 0, 'tag-missing': 0, 'type-nodes-missing': 0, 'type-draw-missing': 0, 'type-inrush-missing': 0,
  'type-bus-draw-missing': 0,
  'supply-gives-nothing': 0, 'supply-wrong-voltage': 0, 'supply-devices-over-usable': 0, 'supply-over-usable': 0, 'supply-over-fuse': 0, 'supply-over-target': 0, 'supply-lives-on-diversity-usable': 0,
  'supply-lives-on-diversity-fuse': 0, 'supply-series-drop-missing': 0, 'supply-fuse-never-acts': 0,
  'supply-rating-missing': 0, 'supply-fuse-not-checked': 0, 'supply-purposes-mixed': 0,
  'supply-warm-derating-unknown': 0, 'supply-over-start': 0, 'supply-over-battery': 0, 'supply-battery-missing': 0,
  'branch-over-limit': 0, 'branch-over-reserve': 0, 'branch-limit-missing': 0,
  'branch-over-bus-current': 0, 'branch-over-bus-reserve': 0, 'branch-over-terminators': 0, 'branch-under-terminators': 0, 'branch-not-terminated': 0,
});

const MISFITS = ['device-over-voltage', 'device-under-voltage', 'device-other-voltage'] as const;
const [INCOMPLETE, NEAR, OVER] = [1, 2, 3];

/** Whether a value is above its limit by more than the rounding of a sum; unknown is not. */
const isAbove = (value: number, limit: number) =>
  value - limit > 1e-9 * Math.max(Math.abs(value), Math.abs(limit));

const isUnknown = (value: number) => value !== value;

/** Judges the figures of the workload by the conditions of all checks that may find something in it. */
export class Judgement {
  found = nothing();
  /** Of the refs of device rows, kept up as they change: how many share theirs, or hold a hidden character. */
  readonly ofRefs = { shared: 0, hidden: 0 };
  readonly #tables: Readonly<Record<'types' | 'supplies' | 'branches', Tagged>>;

  constructor(tables: Readonly<Record<'types' | 'supplies' | 'branches', Tagged>>) {
    this.#tables = tables;
  }

  judge(devices: DeviceColumns, count: number): void {
    this.found = nothing();
    this.found['tag-used-twice'] += this.ofRefs.shared;
    this.found['hidden-character'] += this.ofRefs.hidden;
    for (const sheet of ['types', 'supplies', 'branches'] as const) this.#tagsAndRanges(sheet);
    this.#devices(devices, count);
    this.#types(this.#tables.types);
    this.#supplies(this.#tables.supplies);
    this.#branches(this.#tables.branches);
  }

  #tagsAndRanges(sheet: 'types' | 'supplies' | 'branches'): void {
    const { found } = this;
    const { tags, isShared, isHidden, outside } = this.#tables[sheet];
    for (let at = 0; at < tags.length; at += 1) {
      if ((tags[at] ?? null) === null) found['tag-missing'] += 1;
      found['tag-used-twice'] += isShared[at]!;
      found['hidden-character'] += isHidden[at]!;
    }
    for (const count of outside) found['number-out-of-range'] += count;
  }

  #devices(devices: DeviceColumns, count: number): void {
    const { type, rail, branch, run, qty, ownDraw, ownDiversity, distance, unitDraw, demand } = devices;
    const { types, supplies, branches } = this.#tables;
    const { minVoltage, maxVoltage, voltage } = types.columns as Record<string, Float64Array>;
    const { usable, highest, lowest, overload, oversized, rows, misfits, misfit } =
      supplies.columns as Record<string, Float64Array>;
    const railVoltage = supplies.columns.voltage!;
    const [oddTypes, oddRails, oddBranches] = [types.isOdd, supplies.isOdd, branches.isOdd];
    const { found } = this;
    for (let at = 0; at < count; at += 1) {
      const ofType = type[at]!;
      const ofRail = rail[at]!;
      const ofBranch = branch[at]!;
      const many = qty[at]! >= 0 ? qty[at]! : NaN;
      if (isUnknown(demand[at]!)) {
        if (isUnknown(qty[at]!)) found['device-quantity-missing'] += 1;
        // What its type does not say is found there, and a type that there is not at its name.
        else if (!isUnknown(many) && isUnknown(ownDraw[at]!) && isUnknown(unitDraw[at]!) && (ofType === EMPTY || (ofType >= 0 && types.columns.power![ofType]! >= 0))) found['device-draw-missing'] += 1;
      }
      if (ofRail >= 0) {
        if (many !== 0) rows![ofRail]! += 1;
        if (many !== 0 && !isUnknown(many) && isAbove(unitDraw[at]! / 1000, usable![ofRail]!)) {
          oversized![ofRail]! += 1;
        }
        if (ofType >= 0) {
          const least = minVoltage![ofType]!;
          const most = maxVoltage![ofType]!;
          const given = railVoltage[ofRail]!;
          const is = isAbove(highest![ofRail]!, most) ? 0 : isAbove(least, lowest![ofRail]!) ? 1
            : isAbove(Math.abs(voltage![ofType]! - given), 0.1 * given) && (isUnknown(least) || isUnknown(most)) ? 2
              : 3;
          if (is < 3 && many !== 0) {
            if (misfits![ofRail] === 0) misfit![ofRail] = is;
            misfits![ofRail]! += 1;
          }
        } else if (ofType === EMPTY && overload![ofRail] === RETRIES) found['device-start-unknown'] += 1;
      } else if (ofRail === EMPTY && run[at] === EMPTY) found['device-without-rail'] += 1;
      if (ofBranch !== EMPTY && ofType === EMPTY && !isUnknown(unitDraw[at]!)) {
        found['device-nodes-missing'] += 1;
      }
      if (ofType >= 0 ? oddTypes[ofType] === 1 : ofType !== EMPTY) this.#name(types, ofType);
      if (ofRail >= 0 ? oddRails[ofRail] === 1 : ofRail !== EMPTY) this.#name(supplies, ofRail);
      if (ofBranch >= 0 ? oddBranches[ofBranch] === 1 : ofBranch !== EMPTY) this.#name(branches, ofBranch);
      if (run[at]! !== EMPTY) this.#name(undefined, run[at]!);
      if (qty[at]! < 0) found['number-out-of-range'] += 1;
      if (distance[at]! < 0) found['number-out-of-range'] += 1;
      if (ownDraw[at]! < 0) found['number-out-of-range'] += 1;
      if (ownDiversity[at]! < 0 || ownDiversity[at]! > 1) found['number-out-of-range'] += 1;
    }
  }

  /** A reference to a row whose tag is odd, or to none. */
  #name(named: Tagged | undefined, place: number): void {
    if (place === NAMES_NONE) this.found['tag-names-nothing'] += 1;
    if (place === HIDDEN || named?.isHidden[place] === 1) this.found['hidden-character'] += 1;
  }

  #types({ columns, outside }: Tagged): void {
    const { nodes, inrush, draw, power, busDraw } = columns;
    const { waitingForNodes, waitingForInrush, waitingForDraw, waitingForBus } = columns;
    for (let at = 0; at < nodes!.length; at += 1) {
      if (isUnknown(nodes![at]!) && waitingForNodes![at]! > 0) this.found['type-nodes-missing'] += 1;
      // What stands there and means nothing is told by itself.
      const isGiven = outside[at]! > 0;
      if (isUnknown(draw![at]!) && isUnknown(power![at]!) && waitingForDraw![at]! > 0 && !isGiven) this.found['type-draw-missing'] += 1;
      if (isUnknown(busDraw![at]!) && waitingForBus![at]! > 0) this.found['type-bus-draw-missing'] += 1;
      if (isUnknown(inrush![at]!) && waitingForInrush![at]! > 0) this.found['type-inrush-missing'] += 1;
    }
  }

  #supplies({ columns: table, isShared, outside }: Tagged): void {
    const { found } = this;
    const { demand, connected, usable, fuse, loading, target, rated, units, peak, redundant, seriesDrop } = table;
    const { missing, purpose, purposes, overload, start, startMissing, standbyHours, battery, batteryNeeded } = table;
    const [oversized, rows, misfits] = [table.oversized!, table.rows!, table.misfits!];
    for (let at = 0; at < demand!.length; at += 1) {
      const [used, all, most, opens] = [demand![at]!, connected![at]!, usable![at]!, fuse![at]!];
      const gives = rated![at]! * (units![at]! - redundant![at]!) * peak![at]!;
      // Whoever names one of two rows of a tag may mean the other.
      let status = isShared[at] === 1 || outside[at]! > 0 ? INCOMPLETE : 0;
      const find = (rule: keyof typeof found, rank: number) => {
        found[rule] += 1;
        status = Math.max(status, rank);
      };
      if (most === 0) find('supply-gives-nothing', OVER);
      else if (isAbove(used, most)) find('supply-over-usable', OVER);
      if (oversized[at]! > 0) {
        status = OVER;
        // One is the cause, and told at its row; several are told here, unless all together are too much.
        if (most > 0 && oversized[at] === 1) found['device-over-supply'] += 1;
        else if (most > 0 && !isAbove(used, most)) find('supply-devices-over-usable', OVER);
      }
      if (misfits[at]! > 0) {
        status = OVER;
        // The rail is the cause where most of its rows do not bear it; else they are told at the first of them.
        found[misfits[at]! > 1 && 2 * misfits[at]! > rows[at]! ? 'supply-wrong-voltage' : MISFITS[table.misfit![at]!]!] += 1;
      }
      // Beyond both limits is told once.
      if (isAbove(used, opens) && !(most > 0 && isAbove(used, most))) find('supply-over-fuse', OVER);
      if (isAbove(loading![at]!, target![at]!) && !isAbove(used, most)) find('supply-over-target', NEAR);
      const isLiving = isAbove(all, most) && !isAbove(used, most);
      if (isLiving) find('supply-lives-on-diversity-usable', NEAR);
      if (isAbove(all, opens) && !isAbove(used, opens) && !isLiving) find('supply-lives-on-diversity-fuse', NEAR);
      if (redundant![at] === 1 && isUnknown(seriesDrop![at]!)) find('supply-series-drop-missing', INCOMPLETE);
      if (isAbove(opens, gives) && most !== 0) find('supply-fuse-never-acts', NEAR);
      if (isUnknown(rated![at]!)) find('supply-rating-missing', INCOMPLETE);
      // What a total lacks is told at the rows that lack it.
      if (missing![at]! > 0) status = Math.max(status, INCOMPLETE);
      if (isUnknown(opens)) find('supply-fuse-not-checked', 0);
      const bits = purposes![at]! | (purpose![at]! < 3 ? 1 << purpose![at]! : 0);
      if ((bits & (bits - 1)) !== 0) find('supply-purposes-mixed', 0);
      if (!isUnknown(table.fullUpTo![at]!) && !isUnknown(rated![at]!)) find('supply-warm-derating-unknown', INCOMPLETE);
      if (overload![at] === RETRIES) {
        if (isAbove(start![at]!, most * peak![at]!)) find('supply-over-start', NEAR);
        if (startMissing![at]! > 0) status = Math.max(status, INCOMPLETE);
      }
      if (isAbove(batteryNeeded![at]!, battery![at]!)) find('supply-over-battery', OVER);
      if (standbyHours![at]! >= 0 && isUnknown(battery![at]!)) find('supply-battery-missing', INCOMPLETE);
      table.status![at] = status;
    }
  }

  #branches({ columns, isShared, outside }: Tagged): void {
    const { found } = this;
    const {
      limit, reserve, nodes, free, missing, terminated, terminators, busCurrent, busDemand, busMissing, status,
    } = columns;
    for (let at = 0; at < limit!.length; at += 1) {
      const carried = nodes![at]!;
      let worst = isShared[at] === 1 || outside[at]! > 0 ? INCOMPLETE : 0;
      if (isUnknown(limit![at]!) && outside[at] === 0) {
        found['branch-limit-missing'] += 1;
        worst = INCOMPLETE;
      }
      if (missing![at]! > 0) worst = INCOMPLETE;
      if (isAbove(carried, limit![at]!)) {
        found['branch-over-limit'] += 1;
        worst = OVER;
      } else if (isAbove(carried, carried + free![at]!) && reserve![at]! >= 0) {
        found['branch-over-reserve'] += 1;
        worst = NEAR;
      }
      const [onBus, given] = [busDemand![at]!, busCurrent![at]!];
      if (isAbove(onBus, given)) {
        found['branch-over-bus-current'] += 1;
        worst = OVER;
      } else if (isAbove(onBus, given * (1 - reserve![at]!))) {
        found['branch-over-bus-reserve'] += 1;
        worst = Math.max(worst, NEAR);
      }
      if (given > 0 && busMissing![at]! > 0) worst = Math.max(worst, INCOMPLETE);
      if (terminators![at]! < 2) {
        found['branch-under-terminators'] += 1;
        worst = Math.max(worst, NEAR);
      }
      if (isAbove(terminators![at]!, 2)) {
        found['branch-over-terminators'] += 1;
        worst = OVER;
      }
      if (terminated![at] !== 1 && isUnknown(terminators![at]!)) found['branch-not-terminated'] += 1;
      status![at] = worst;
    }
  }
}
