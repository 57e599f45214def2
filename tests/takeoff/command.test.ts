import { execFile } from 'node:child_process';
import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readSchedule } from '../../src/exchange/index.ts';
import { TYPES } from './support.ts';
import { runCommand } from './run-command.ts';

interface Printed {
  readonly lines: readonly { readonly reason: string }[];
  readonly read: number;
  readonly taken: number;
  readonly leftOut: number;
  readonly undecided: number;
}

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const data = (name: string) => path.join(ROOT, 'data', name);
const folder = await mkdtemp(path.join(tmpdir(), 'takeoff-'));

async function file(name: string, text: string): Promise<string> {
  const full = path.join(folder, name);
  await writeFile(full, text);
  return full;
}

describe('npm run takeoff', () => {
  it('prints what becomes of each line, and sums that balance', async () => {
    const { code, out, warnings } = await runCommand(data('takeoffs/workshop.tsv'));
    const printed = JSON.parse(out) as Printed;
    expect(code).toBe(0);
    expect(printed).toMatchObject({ read: 86, taken: 30, leftOut: 40, undecided: 16 });
    expect(Object.keys(printed)).toEqual(['lines', 'read', 'taken', 'leftOut', 'undecided']);
    expect(printed.lines).toHaveLength(18);
    expect(printed.lines[3]).toEqual({
      key: 'workshop.tsv!4', line: 4, source: { file: 'workshop.tsv', line: 4 }, outcome: 'taken', qty: 8, type: 'Presence detector', area: '0, 0.01 Assembly',
      reason: 'It has the name of its type.',
    });
    expect(warnings).toEqual([
      expect.stringMatching(/: Lines that need a decision and are not in the schedule: 9, 15, 16\.$/),
      expect.stringMatching(/: Read 86 = taken 30 \+ left out 40 \(40 in totals\) \+ undecided 16\.$/),
    ]);
  });

  it.each([
    [
      'de', 'Sie trägt den Namen ihres Typs.',
      /: Gelesen 86 = übernommen 30 \+ weggelassen 40 \(40 in Summen\) \+ offen 16\.$/,
    ],
    [
      'fr-CH', 'Elle porte le nom de son type.',
      /: Lu 86 = retenu 30 \+ écarté 40 \(dont 40 en totaux\) \+ à décider 16\.$/,
    ],
  ])('gives its reasons in the language that is asked for, and the rest as ever: %s', async (
    lang, reason, equation
  ) => {
    const [english, other] = [
      await runCommand(data('takeoffs/workshop.tsv')), await runCommand(data('takeoffs/workshop.tsv'), '--lang', lang),
    ];
    const withoutReasons = (text: string) =>
      JSON.stringify(JSON.parse(text), (key, value: unknown) => key === 'reason' ? '' : value);
    expect(other.code).toBe(0);
    expect(withoutReasons(other.out)).toBe(withoutReasons(english.out));
    expect((JSON.parse(other.out) as Printed).lines[3]!.reason).toBe(reason);
    expect(other.warnings.at(-1)).toMatch(equation);
  });

  it('refuses a language that is not spoken', async () => {
    expect(await runCommand(data('takeoffs/workshop.tsv'), '--lang', 'it'))
      .toMatchObject({ code: 2, out: '', warnings: ['--lang it is not spoken. Give one of en, de, fr.'] });
  });

  it.each([
    ['grundschule.csv', 'Windows-1252'], ['mediatheque.txt', 'UTF-16 LE'], ['clinic.tsv', 'UTF-16 BE'], ['hotel.csv', undefined],
  ])('says which encoding of %s was taken: %s', async (name, encoding) => {
    const { warnings } = await runCommand(data(`takeoffs/${name}`));
    expect(warnings.filter((line) => line.includes('It was read as'))).toEqual(encoding === undefined ? []
      : [`${data(`takeoffs/${name}`)}: It was read as ${encoding}. Where letters with accents look wrong, save it as UTF-8.`]);
  });

  it('gives new types the draw, nodes, price and part number of their columns, from page and terminal alike', async () => {
    const output = path.join(folder, 'priced.schedule.json');
    const list = await file('priced.csv', [
      'Device;Qty;Draw (mA);Nodes;Unit price;Part number', 'Flap drive;2;120;1;85,50;FD-1', 'Flap drive;3;120;1;85,50;FD-1', 'Odd box;1;40;2;12;OB', 'Odd box;1;40;3;12;OB',
    ].join('\n'));
    await runCommand(list, '--output', output);
    const written = readSchedule(await readFile(output, 'utf8'));
    if (!written.ok) throw new Error(JSON.stringify(written.problems));
    const types = (written.content.sheets.types ?? []).slice(TYPES.length).map(({ note: _, ...cells }) => cells);
    expect(types).toEqual([
      { type: 'Flap drive', draw: 120, nodes: 1, price: 85.5, partNumber: 'FD-1' },
      // Its lines say 2 nodes and 3, so that they stay unknown.
      { type: 'Odd box', draw: 40, price: 12, partNumber: 'OB' },
    ]);
  });

  it('writes a schedule with the types, the new ones and the devices', async () => {
    const output = path.join(folder, 'workshop.schedule.json');
    await runCommand(
      data('takeoffs/workshop.tsv'), '--output', output, '--as', 'damper actuators=Damper actuator', '--as',
      'K2, 2-key wall station='
    );
    const written = readSchedule(await readFile(output, 'utf8'));
    if (!written.ok) throw new Error(JSON.stringify(written.problems));
    const { devices = [], types = [] } = written.content.sheets;
    expect(devices).toHaveLength(10);
    expect(devices.find(({ type }) => type === 'Damper actuator'))
      .toEqual({ area: '0, 0.01 Assembly', type: 'Damper actuator', qty: 6, rail: 'P1',
        source: 'workshop.tsv: 9 (Damper actuator › 0, 0.01 Assembly)' });
    expect(types).toHaveLength(TYPES.length + 2);
    expect(types.find(({ type }) => type === 'Damper actuator')!.aliases).toMatch(/; DA, Damper actuators$/);
  });

  it('looks the names up among the types that are given, without their other sheets', async () => {
    const types = await file('types.schedule.json', JSON.stringify({
      format: 'elv-load-schedule', version: 2, details: {},
      sheets: { types: [{ type: 'Flap drive', draw: 100 }], devices: [{ ref: 'old', qty: 3 }] },
    }));
    const takeoff = await file('flaps.csv', 'Device,Qty\nFlap drive,2\nRouter,1\n');
    const output = path.join(folder, 'flaps.schedule.json');
    const { out } = await runCommand(takeoff, '--types', types, '--output', output);
    expect((JSON.parse(out) as Printed).lines.map(({ reason }) => reason).slice(1)).toEqual([
      'It has the name of its type.', '“Router” becomes a new type; of it nothing is known but what the list says.',
    ]);
    const written = readSchedule(await readFile(output, 'utf8'));
    expect(written).toMatchObject(
      { ok: true, content: { sheets: { devices: [{ type: 'Flap drive', qty: 2 }, { type: 'Router', qty: 1 }] } } }
    );
  });

  it('is told what columns hold', async () => {
    const takeoff = await file('odd.csv', 'What,Where to,How often\nRouter,Hall,2\n');
    const { code, out } = await runCommand(takeoff, '--column', 'type=What', '--column', 'qty=3', '--column', 'area=2');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ taken: 2, lines: [{}, { type: 'Router', area: 'Hall' }] });
  });

  it('takes, leaves out and counts single lines as it is told, a total and a title among them', async () => {
    const list = await file('lines.csv', [
      'Device,Room,Qty', 'Router,Hall,3', 'Router,Bar,ca. 4', 'Router,Shop,4', 'Total,,9', 'Router spare,,', 'Card reader,Hall,2',
    ].join('\n'));
    // 9 is not 3 + 4, so that the total is asked about, as «ca. 4» is.
    const asked = await runCommand(list);
    expect(JSON.parse(asked.out)).toMatchObject({ taken: 9, undecided: 13 });
    expect(asked.warnings[0]).toMatch(/are not in the schedule: 3, 5, 6\.$/);
    const decided = await runCommand(
      list, '--take', '3', '--qty', 'lines.csv!4=5', '--qty', '5=1', '--qty', '6=2', '--leave-out', '7',
      '--as', 'Total=Router', '--as', 'Router spare=Router',
    );
    // 3 + 4 + 5 + 1 + 2 are taken, and the 2 card readers are not.
    expect(JSON.parse(decided.out)).toMatchObject({ read: 17, taken: 15, leftOut: 2, undecided: 0 });
    expect((JSON.parse(decided.out) as { lines: { outcome: string; qty: number; type: string }[] }).lines.slice(1)
      .map(({ outcome, qty, type }) => `${outcome} ${qty} ${type}`)).toEqual([
      // Blank rooms are that of the shop above.
      'taken 3 Router', 'taken 4 Router', 'taken 5 Router', 'merged 1 Router', 'merged 2 Router', 'left-out 2 null',
    ]);
  });

  it('names a line by its file and sheet where several have its number, and a count by its column', async () => {
    const [one, other] = [await file('one.csv', 'Device,Qty L0,Qty L1\nRouter,1,2\n'), await file('other.csv', 'Device,Qty\nRouter,8\n')];
    const { out } = await runCommand(one, other, '--leave-out', 'one.csv!2/3', '--qty', 'other.csv!2=7');
    expect(JSON.parse(out)).toMatchObject({ read: 10, taken: 8, leftOut: 2, undecided: 0 });
    const whole = await runCommand(one, other, '--leave-out', 'one.csv!2');
    expect(JSON.parse(whole.out)).toMatchObject({ read: 11, taken: 8, leftOut: 3 });
    for (const [words, message] of [
      [['--take', '2'], /^--take 2: several lists have a line 2\. Name one of one\.csv!2, other\.csv!2\.$/],
      [['--leave-out', 'one.csv!9'], /^--leave-out one\.csv!9: there is no line one\.csv!9\. .* as in one\.csv!2\/2\.$/],
      [['--qty', 'one.csv!2=4'], /^--qty one\.csv!2=4: line one\.csv!2 has several counts\. Name one of one\.csv!2\/2, one\.csv!2\/3\.$/],
      [['--qty', 'other.csv!2=many'], /many is no quantity/],
      [['--take', 'other.csv!2', '--leave-out', 'other.csv!2'], /--take other\.csv!2 decides on the same/],
      [['--take', 'other.csv!1'], /^--take other\.csv!1: it is not taken\. These are the headings\.$/],
    ] as const) {
      const refused = await runCommand(one, other, ...words);
      expect([refused.code, refused.out, refused.warnings.join()]).toEqual([2, '', expect.stringMatching(message)]);
    }
  });

  const refused: [why: string, words: string[], message: RegExp][] = [
    ['no file', [], /No takeoff is named/],
    ['a file that is not there', [path.join(folder, 'none.csv')], /none\.csv: there is no such file/],
    ['an unknown option', ['a.csv', '--colour'], /--help says what there is/],
    ['an unknown field', ['a.csv', '--column', 'colour=1'], /give one of qty, total, times, unit, type/],
    ['an assignment without its sign', ['a.csv', '--as', 'Router'], /--as "NAME=TYPE"/],
    [
      'types that are not there', [data('takeoffs/workshop.tsv'), '--types', 'none.json'],
      /none\.json: there is no such file/,
    ],
    ['a name that does not occur', [data('takeoffs/workshop.tsv'), '--as', 'Anchor=Router'], /is called Anchor/],
    [
      'a type that there is not', [data('takeoffs/workshop.tsv'), '--as', 'Damper actuators=Anchor'],
      /there is no type Anchor/,
    ],
    [
      'a folder that is not there', [data('takeoffs/workshop.tsv'), '--output', path.join(folder, 'no', 'x.json')],
      /cannot be written/,
    ],
  ];

  it.each(refused)('refuses %s with 2, says what to do and writes nothing', async (_, words, message) => {
    const { code, out, warnings } = await runCommand(...words);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(warnings.join('\n')).toMatch(message);
  });

  it('names the line of a fault and the columns among which to choose', async () => {
    expect(await runCommand(await file('quote.csv', 'Device,Qty\nRouter,1\n"Router,2\n')))
      .toMatchObject({ code: 2, warnings: [expect.stringMatching(/quote\.csv:3: Line 3: /)] });
    expect(await runCommand(await file('none.csv', 'Device,Room\nRouter,Hall\n'))).toMatchObject({
      code: 2, warnings: [
        expect.stringContaining(
          'No column is known to hold the quantities; the columns are 1 “Device”, 2 “Room”. Say which it is, as in --column qty=2.'
        ),
      ],
    });
  });

  it('says what there is', async () => {
    expect(await runCommand('--help'))
      .toMatchObject({ code: 0, out: expect.stringContaining('--types SCHEDULE') as string, warnings: [] });
  });

  it('runs from the terminal', async () => {
    const { stdout } = await promisify(execFile)(
      'npm', ['run', '-s', 'takeoff', '--', 'data/takeoffs/hotel.csv'], { cwd: ROOT, maxBuffer: 1e8 }
    );
    expect(JSON.parse(stdout)).toMatchObject({ read: 11160, taken: 3720, leftOut: 7440, undecided: 0 });
  });
});
