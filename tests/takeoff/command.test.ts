import { execFile } from 'node:child_process';
import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
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

const ROOT = new URL('../../', import.meta.url).pathname;
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
      line: 4, source: { file: 'workshop.tsv', line: 4 }, outcome: 'taken', qty: 8, type: 'Presence detector', area: '0, 0.01 Assembly',
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
