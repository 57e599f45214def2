import { EMPTY, RETRIES, type Table, type Tagged } from './typed-tables.ts';

/** The columns of device rows: references as places of rows, numbers as entered (`own…`) and as worked out. */
export type DeviceColumns = Record<'type' | 'rail' | 'branch' | 'run', Int32Array> & Record<
  'qty' | 'ownDraw' | 'ownDiversity' | 'distance' | 'unitDraw' | 'diversity' | 'connected' | 'demand' | 'share' | 'nodes' | 'busDemand'
  | 'terminalVoltage' | 'voltageMargin', Float64Array>;

interface Tables {
  readonly types: Tagged;
  readonly supplies: Tagged;
  readonly branches: Tagged;
}

/** Works out every figure of the workload; no run is in it, so that no device has a voltage at its place. */
export function calculate(devices: DeviceColumns, count: number, tables: Tables): void {
  const [types, supplies, branches] = [tables.types.columns, tables.supplies.columns, tables.branches.columns];
  supplyLimits(supplies);
  // Purposes that are kept apart have a bit each; «other», the last one, has none.
  types.bit!.forEach((_, at) => { types.bit![at] = types.purpose![at]! < 3 ? 1 << types.purpose![at]! : 0; });
  for (const key of ['waitingForNodes', 'waitingForInrush', 'waitingForDraw', 'waitingForBus']) types[key]!.fill(0);
  for (const key of ['connected', 'demand', 'missing', 'start', 'startMissing', 'purposes', 'oversized', 'rows', 'misfits']) {
    supplies[key]!.fill(0);
  }
  for (const key of ['nodes', 'missing', 'busDemand', 'busMissing']) branches[key]!.fill(0);
  sum(devices, count, tables);
  supplyFigures(supplies);
  branchFigures(branches);
}

function supplyLimits(table: Table): void {
  const { voltage, tolerance, seriesDrop, redundant, battery, rated, units, derating } = table;
  const { lowest, highest, usable, fullUpTo, standbyHours } = table;
  for (let at = 0; at < usable!.length; at += 1) {
    const drop = seriesDrop![at]! >= 0 ? seriesDrop![at]! : redundant![at] === 1 ? NaN : 0;
    const [less, more] = [1 - tolerance![at]!, 1 + tolerance![at]!];
    const hasBattery = battery![at]! > 0 || standbyHours![at]! > 0;
    const least = voltage![at]! * (hasBattery ? Math.min(less, 0.875) : less) - drop;
    lowest![at] = least > 0 ? least : NaN;
    highest![at] = voltage![at]! * (hasBattery ? Math.max(more, 1.15) : more);
    // What a supply gives where it is warm hangs on its enclosure, of which there is none.
    usable![at] = fullUpTo![at]! > -Infinity ? NaN : rated![at]! * (units![at]! - redundant![at]!) * derating![at]!;
  }
}

function sum(devices: DeviceColumns, count: number, tables: Tables): void {
  const [types, supplies, branches] = [tables.types.columns, tables.supplies.columns, tables.branches.columns];
  /** What follows from a row that shares its tag may be another, and is counted as not wholly known. */
  const [typeShared, railShared] = [tables.types.isShared, tables.supplies.isShared];
  const { type, rail, branch, qty, ownDraw, ownDiversity, unitDraw, diversity } = devices;
  const { connected, demand, share, nodes, busDemand, terminalVoltage, voltageMargin } = devices;
  const { waitingForNodes, waitingForInrush, waitingForDraw, waitingForBus } = types;
  const { draw, power, inrush, minVoltage, bit, busDraw, nodes: typeNodes, diversity: typeDiversity } = types;
  const { voltage, usable, overload, start, startMissing, purposes } = supplies;
  const [allConnected, allDemand, missing] = [supplies.connected!, supplies.demand!, supplies.missing!];
  const [allNodes, nodesMissing] = [branches.nodes!, branches.missing!];
  const { busCurrent, busDemand: allOnBus, busMissing } = branches;
  for (let at = 0; at < count; at += 1) {
    const ofType = type[at]!;
    const ofRail = rail[at]!;
    const ofBranch = branch[at]!;
    const many = qty[at]! >= 0 ? qty[at]! : NaN;
    const hasType = ofType >= 0;
    const hasRail = ofRail >= 0;
    let each = ownDraw[at]!;
    if (each !== each && hasType) {
      each = draw![ofType]!;
      if (each !== each && hasRail) each = power![ofType]! / voltage![ofRail]! * 1000;
    } else if (each < 0) each = NaN;
    let factor = ownDiversity[at]!;
    if (factor !== factor) factor = hasType && typeDiversity![ofType]! >= 0 ? typeDiversity![ofType]! : 1;
    else if (factor < 0 || factor > 1) factor = NaN;
    if (hasType && ownDraw[at]! !== ownDraw[at]!) waitingForDraw![ofType]! += 1;
    const amps = many * each / 1000;
    const used = amps * factor;
    const counted = hasType ? many * typeNodes![ofType]! : NaN;
    unitDraw[at] = each;
    diversity[at] = factor;
    connected[at] = amps;
    demand[at] = used;
    share[at] = hasRail ? used / usable![ofRail]! : NaN;
    const onBus = hasType ? many * busDraw![ofType]! / 1000 : NaN;
    nodes[at] = counted;
    busDemand[at] = onBus;
    voltageMargin[at] = hasType && many !== 0 ? terminalVoltage[at]! - minVoltage![ofType]! : NaN;
    const isDoubtful = hasType && typeShared[ofType] === 1;
    if (hasRail) {
      if (amps === amps) allConnected[ofRail]! += amps;
      if (used === used) allDemand[ofRail]! += used;
      const isDrawDoubtful = ownDraw[at]! !== ownDraw[at]! && (isDoubtful || railShared[ofRail] === 1);
      if (used !== used || isDrawDoubtful || (isDoubtful && ownDiversity[at]! !== ownDiversity[at]!)) {
        missing[ofRail]! += 1;
      }
      if (hasType) purposes![ofRail]! |= bit![ofType]!;
      if (overload![ofRail] === RETRIES) {
        if (hasType) waitingForInrush![ofType]! += 1;
        const asked = many * Math.max(each / 1000, hasType ? inrush![ofType]! : NaN);
        if (asked === asked) start![ofRail]! += asked;
        else startMissing![ofRail]! += 1;
      }
    }
    if (ofBranch !== EMPTY && hasType) waitingForNodes![ofType]! += 1;
    if (ofBranch >= 0) {
      if (counted === counted) allNodes[ofBranch]! += counted;
      if (counted !== counted || isDoubtful) nodesMissing[ofBranch]! += 1;
      if (onBus === onBus) allOnBus![ofBranch]! += onBus;
      if (onBus !== onBus || isDoubtful) busMissing![ofBranch]! += 1;
      if (hasType && busCurrent![ofBranch]! > 0) waitingForBus![ofType]! += 1;
    }
  }
}

function supplyFigures(table: Table): void {
  const { usable, connected, demand, target, fuse, voltage, efficiency, standbyHours, battery } = table;
  for (let at = 0; at < usable!.length; at += 1) {
    const [used, all, most] = [demand![at]!, connected![at]!, usable![at]!];
    table.loading![at] = used / most;
    table.spare![at] = most * target![at]! - used;
    table.limitDiversity![at] = all === 0 ? NaN : most * target![at]! / all;
    table.fuseLoading![at] = used / fuse![at]!;
    table.loss![at] = voltage![at]! * used * (1 / efficiency![at]! - 1);
    table.power![at] = voltage![at]! * used;
    // Without cases everything has to be bridged.
    table.standbyDemand![at] = used;
    const isSlow = used <= battery![at]! / 20;
    table.batteryNeeded![at] = 1.25 * (isSlow ? 1 : 1.75) * used * standbyHours![at]!;
    table.batteryLasts![at] = used > 0 ? battery![at]! / (1.25 * (isSlow ? 1 : 1.75) * used) : NaN;
  }
}

function branchFigures({ limit, reserve, nodes, free, used }: Table): void {
  for (let at = 0; at < limit!.length; at += 1) {
    free![at] = Math.floor(limit![at]! * (1 - reserve![at]!) + 1e-9) - nodes![at]!;
    used![at] = nodes![at]! / limit![at]!;
  }
}
