import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runShare } from '../../src/cli/run-share.ts';
import { readSchedule } from '../../src/exchange/index.ts';

let folder: string;
beforeAll(async () => { folder = await mkdtemp(join(tmpdir(), 'share-')); });
afterAll(async () => { await rm(folder, { recursive: true }); });

/** Runs the command on files of these texts. */
async function run(files: Readonly<Record<string, string>>, ...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  for (const [name, text] of Object.entries(files)) await writeFile(join(folder, name), text);
  const code = await runShare([...Object.keys(files).map((name) => join(folder, name)), ...words], {
    out: (text) => { out += text; },
    warn: (line) => { warnings.push(line.replaceAll(`${folder}/`, '')); },
  });
  return { code, out, warnings };
}

const FILES = {
  'types.csv': 'Type,Purpose,Draw (mA),Nodes\nSensor,control,100,1\nGateway,control,200,7\nLamp,lighting,500,0\n',
  'branches.csv': 'Branch,Limit\nB1,20\n',
  'supplies.csv': 'Rail,Purpose,Rated (A)\nC1,control,2.5\nL1,lighting,5\n',
  'devices.csv': 'Ref,Area,Type,Qty\nD1,Hall,Sensor,12\nD2,Attic,Gateway,3\nD3,Hall,Lamp,6\nD4,,Sensor,\n',
};

describe('share', () => {
  it('prints how many are used, that this is the least, and what goes where', async () => {
    const { code, out, warnings } = await run(FILES);
    const printed = JSON.parse(out) as Record<string, unknown>;
    expect(code).toBe(0);
    // 12 + 3 × 7 = 33 nodes in branches of 20.
    expect(printed).toMatchObject({ over: 'branches', used: 2, lowerBound: 2, added: ['B2'] });
    // How many D4 counts is not known, so that nothing is proven; without it, 33 nodes need 2 whatever the sharing.
    expect(printed).toMatchObject({ proven: false, limits: [{ panel: null, size: 33, used: 2, byTotal: 2 }] });
    const placements = printed.placements as { row: number; ref: string; tag: string; qty: number }[];
    expect(placements.filter(({ ref }) => ref === 'D2').reduce((sum, { qty }) => sum + qty, 0)).toBe(3);
    expect(Object.keys(placements[0]!)).toEqual(['row', 'ref', 'tag', 'qty']);
    expect(printed.leftOut).toMatchObject(
      [{ row: 2, ref: 'D3', code: 'takes-none' }, { row: 3, ref: 'D4', code: 'quantity-unknown' }]
    );
    expect(warnings).toEqual(
      ['devices, row 4 (D4): has no place. Its quantity is not known. Enter how many devices there are.']
    );
  });

  it('says once where no branch has a limit', async () => {
    const { out, warnings } = await run({ ...FILES, 'branches.csv': 'Branch,Limit\nB1,\n' });
    expect(JSON.parse(out)).toMatchObject({ used: 0, placements: [], added: [] });
    expect(warnings.filter((line) => line.includes('limit'))).toEqual([
      '2 device rows have no place. No branch has a known limit. Enter the most nodes that a branch may carry, or the standard of the bus, such as TIA-485-A; further branches are made like it.',
    ]);
  });

  it('keeps rows whole where asked to', async () => {
    const { out } = await run(FILES, '--whole-rows');
    // The 21 nodes of D2 exceed a branch.
    expect(JSON.parse(out)).toMatchObject({
      used: 1, placements: [
        { row: 0, ref: 'D1', tag: 'B1', qty: 12 },
      ], leftOut: [{ ref: 'D2', code: 'too-large' }, {}, {}],
    });
  });

  it('shares out over supplies, and writes the schedule and what the job needs', async () => {
    const [output, sizing] = [join(folder, 'shared.schedule.json'), join(folder, 'sizing.csv')];
    const { out } = await run(FILES, '--over', 'supplies', '--output', output, '--sizing', sizing);
    // Control: 12 × 0.1 + 3 × 0.2 = 1.8 A of 2 A; lighting: 3 A of 4 A.
    expect(JSON.parse(out)).toMatchObject({ over: 'supplies', used: 2, lowerBound: 2, proven: false, added: [] });
    const written = readSchedule(await readFile(output, 'utf8'));
    if (!written.ok) throw new Error('The schedule cannot be read back.');
    expect(written.content.sheets.devices!.map(({ rail }) => rail)).toEqual(['C1', 'C1', 'L1', undefined]);
    const lines = (await readFile(sizing, 'utf8')).split('\r\n');
    const items = [
      'Item', '"Supply 24 V, lighting', '"Way 24 V, lighting', '"Supply 24 V, control', '"Way 24 V, control',
      'Devices of unknown demand', '"Mains feed 230 V', '"Bus branch', 'Devices of unknown nodes',
    ];
    expect(lines.map((line) => items.find((item) => line.replace('"Devices', 'Devices').startsWith(item))))
      .toEqual([...items, undefined]);
  });

  it('creates rows of a sizing, in the panel that is named', async () => {
    const output = join(folder, 'created.schedule.json');
    const { out, code } = await run(FILES, '--create', '--panel', 'KP', '--extension', '10', '--output', output);
    // Control: 1.8 A, lighting: 3 A, + 10 % at 80 %: 2.475 A and 4.125 A of rating. 33 nodes + 10 % in branches of 20.
    const made = { enclosures: 1, feeds: 1, supplies: 2, ways: 4, branches: 2, modules: 0 };
    expect([code, JSON.parse(out)]).toEqual([0, { made }]);
    const written = readSchedule(await readFile(output, 'utf8'));
    if (!written.ok) throw new Error('The schedule cannot be read back.');
    const { supplies = [], branches = [], devices = [] } = written.content.sheets;
    expect(supplies.slice(2).map(({ rail, rated, enclosure }) => [rail, rated, enclosure])).toEqual([['L2', 5, 'KP'], ['C2', 2.5, 'KP']]);
    expect(branches.slice(1).map(({ enclosure }) => enclosure)).toEqual(['KP', 'KP']);
    expect(devices.find(({ ref }) => ref === 'D4')).toEqual({ ref: 'D4', type: 'Sensor' });
    expect((await run(FILES, '--create')).warnings.join()).toMatch(/^--create makes rows/);
  });

  it('keeps panels apart unless told otherwise, and sizes with equal supplies where asked to', async () => {
    const files = {
      'types.csv': 'Type,Purpose,Draw (mA),Nodes\nSensor,control,100,1\nValve,control,2300,1\n',
      'branches.csv': 'Branch,Limit,Enclosure\nB1,10,P1\nB2,10,P2\n', 'supplies.csv': 'Rail,Purpose,Rated (A)\nC1,control,5\n',
      'devices.csv': 'Ref,Type,Qty,Branch\nD1,Sensor,14,B1\nD2,Sensor,2,B2\n',
    };
    // 14 nodes in branches of 10 are two, 2 are one; taken together 16 are two.
    expect(JSON.parse((await run(files)).out)).toMatchObject({ used: 3, lowerBound: 3, proven: true, limits: [{ panel: 'P1', used: 2 }, { panel: 'P2', used: 1 }] });
    expect(JSON.parse((await run(files, '--across-panels')).out)).toMatchObject({ used: 2, lowerBound: 2, proven: true });
    // 3 × 2.3 A = 6.9 A at 80 % of 2.5 and 10 A; equal units take the larger one for all.
    const sized = async (...words: string[]) => {
      const sizing = join(folder, 'equal.csv');
      const demand = { ...files, 'devices.csv': 'Ref,Type,Qty,Branch\nD1,Valve,3,B1\nD2,Sensor,18,B1\n' };
      await run(demand, '--ratings', '2.5,10', '--sizing', sizing, ...words);
      return (await readFile(sizing, 'utf8')).split('\r\n').filter((line) => line.includes('Supply')).map((line) => line.replaceAll('"', '').slice(0, 40));
    };
    const [mixed, equal] = [await sized(), await sized('--equal-units')];
    expect([mixed.length, equal.length]).toEqual([2, 1]);
  });

  it('takes the types from a list of an office, and sizes with its ratings, modules and ways', async () => {
    const { 'types.csv': office, ...bare } = FILES;
    const [list, sizing] = [join(folder, 'office.csv'), join(folder, 'office-sizing.csv')];
    await writeFile(list, office);
    await rm(join(folder, 'types.csv'), { force: true });
    const unknown = await run({ ...bare, 'types.csv': 'Type\nSensor\n' });
    expect(JSON.parse(unknown.out)).toMatchObject({ placements: [] });
    const { out } = await run({ ...bare, 'types.csv': 'Type\nSensor\n' }, '--types', list, '--ratings', '6,20', '--way-rating', '3', '--sizing', sizing);
    // 12 + 3 × 7 = 33 nodes in branches of 20, as where the schedule has the types itself.
    expect(JSON.parse(out)).toMatchObject({ used: 2, lowerBound: 2, added: ['B2'] });
    const items = (await readFile(sizing, 'utf8')).split('\r\n').map((line) => line.split('",')[0]!.replace('"', ''));
    expect(items.filter((item) => /^(?:Supply|Way)/.test(item))).toEqual([
      'Supply 24 V, lighting, 6 A', 'Way 24 V, lighting, electronic, 3 A', 'Supply 24 V, control, 6 A', 'Way 24 V, control, electronic, 3 A',
    ]);
    for (const [words, says] of [
      [['--types', join(folder, 'none.csv')], /^none\.csv: there is no such file/], [['--ratings', '2.5,none'], /^--ratings 2\.5,none is not understood/],
      [['--way-rating', '2,4'], /^--way-rating 2,4 .*Give a number/], [['--module-outputs', '1.5'], /Give whole numbers/],
    ] as const) expect(await run(FILES, ...words)).toMatchObject({ code: 2, out: '', warnings: [expect.stringMatching(says)] });
  });

  it('lets devices keep their branch where asked to', async () => {
    const files = { ...FILES, 'devices.csv': 'Ref,Type,Qty,Branch\nD1,Sensor,12,B1\nD2,Sensor,9,\n' };
    const { out } = await run(files, '--keep');
    expect(JSON.parse(out)).toMatchObject({ used: 2, kept: [{ ref: 'D1', tag: 'B1', qty: 12 }] });
  });

  it.each<{ name: string; files: Record<string, string>; words: string[]; says: RegExp }>([
    { name: 'no input', files: {}, words: [], says: /^No input is named/ },
    {
      name: 'an unknown sheet', files: FILES, words: ['--over', 'runs'],
      says: /^--over runs is not known. Give one of branches, supplies/,
    },
    { name: 'an unknown option', files: FILES, words: ['--fast'], says: /Unknown option '--fast'/ },
    { name: 'bad input', files: { 'devices.csv': 'Ref,Qty\nD1,many\n' }, words: [], says: /^devices\.csv:2:/ },
    {
      name: 'an output that cannot be written', files: FILES, words: ['--output', '/no/such/folder/x.json'],
      says: /cannot be written/,
    },
  ])('refuses $name with exit code 2 and prints nothing', async ({ files, words, says }) => {
    const { code, out, warnings } = await run(files, ...words);
    expect([code, out]).toEqual([2, '']);
    expect(warnings.join('\n').replace(/^devices, row.*\n/, '')).toMatch(says);
  });

  it('says what it does', async () => {
    const { code, out } = await run({}, '--help');
    expect(code).toBe(0);
    expect(out).toContain('elv-share INPUT');
  });
});
