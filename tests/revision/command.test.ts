import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { runShare } from '../../src/cli/run-share.ts';
import { readSchedule } from '../../src/exchange/index.ts';
import type { Cells } from '../../src/schedule/index.ts';
import { runCommand } from '../takeoff/run-command.ts';
import { total } from './support.ts';

const folder = await mkdtemp(path.join(tmpdir(), 'revised-'));
const at = (name: string) => path.join(folder, name);

async function file(name: string, text: string): Promise<string> {
  await writeFile(at(name), text);
  return at(name);
}

async function devicesIn(name: string): Promise<readonly Cells[]> {
  const read = readSchedule(await readFile(name, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.content.sheets.devices ?? [];
}

const DEVICES = [['Push-button station, 2 keys', 8], ['Presence detector', 4], ['Room thermostat', 6]] as const;
/** 20 rooms of 8 + 4 + 6 devices: 360. */
const LIST = ['Ref;Device;Room;Qty', ...Array.from({ length: 60 }, (_, index) => {
  const [device, qty] = DEVICES[index % 3]!;
  return `D-${String(index + 1).padStart(3, '0')};${device};Room ${101 + Math.floor(index / 3)};${qty}`;
}), ''].join('\n');
/** D-015 has 6 more, D-016 3 less, D-030 with its 6 went, D-061 with 14 came: 371. */
const REVISED = LIST.replace('Room 105;6', 'Room 105;12').replace('Room 106;8', 'Room 106;5')
  .replace('D-030;Room thermostat;Room 110;6\n', '') + 'D-061;Presence detector;Room 130;14\n';

describe('npm run takeoff -- LIST --onto SCHEDULE', async () => {
  const [list, revised, given, shared] = [await file('list.csv', LIST), await file('revised.csv', REVISED), at('a.json'), at('b.json')];
  await runCommand(list, '--output', given);
  const schedule = JSON.parse(await readFile(given, 'utf8')) as { sheets: Record<string, Cells[]> };
  schedule.sheets.branches = [{ branch: 'B1', limit: 45 }];
  await writeFile(given, JSON.stringify(schedule));
  await runShare([given, '--output', shared], { out: () => undefined, warn: () => undefined });

  it('makes 371 devices of 360 that are shared over branches, which stay where they are', async () => {
    const before = await devicesIn(shared);
    expect(total(before)).toBe(360);
    expect(before.every(({ branch }) => branch !== undefined)).toBe(true);
    const { code, out, warnings } = await runCommand(revised, '--onto', shared, '--gone', 'delete', '--output', at('c.json'));
    expect(code).toBe(0);
    expect(JSON.parse(out))
      .toMatchObject({ read: 371, taken: 371, leftOut: 0, undecided: 0, came: 1, changed: 2, went: 1 });
    expect(warnings.at(-1)).toMatch(/: Revised list: 1 came, 2 changed, 1 went, \d+ kept\.$/);
    const after = await devicesIn(at('c.json'));
    expect(total(after)).toBe(371);
    const kept = before.filter(({ ref }) => ref !== 'D-030').map(({ ref, branch }) => [ref, branch]);
    expect(after.slice(0, -1).map(({ ref, branch }) => [ref, branch])).toEqual(kept);
    expect(after.at(-1)).toEqual({ ref: 'D-061', type: 'Presence detector', area: 'Room 130', qty: 14,
      source: 'revised.csv: 61 (Presence detector › Room 130 › D-061)' });
  });

  it('marks what went until somebody chooses, and taken again changes nothing', async () => {
    const first = await runCommand(revised, '--onto', shared, '--output', at('d.json'));
    expect(JSON.parse(first.out)).toMatchObject({ came: 1, changed: 2, went: 1 });
    const gone = (await devicesIn(at('d.json'))).filter(({ state }) => state === 'gone');
    expect(gone).toMatchObject([{ ref: 'D-030', qty: 6, source: expect.stringMatching(/^list\.csv: 31 \(/) as string }]);
    const again = await runCommand(revised, '--onto', at('d.json'), '--output', at('e.json'));
    expect(JSON.parse(again.out)).toMatchObject({ came: 0, changed: 0, lists: [{ name: 'revised.csv', revised: true }] });
    expect(await readFile(at('e.json'), 'utf8')).toBe(await readFile(at('d.json'), 'utf8'));
  });

  it('writes nothing without --output, and says of each row what becomes of it', async () => {
    const { out } = await runCommand(revised, '--onto', shared);
    const { rows } = JSON.parse(out) as { rows: Record<string, unknown>[] };
    expect(rows.filter(({ outcome }) => outcome === 'went')).toEqual([{
      outcome: 'went', ref: 'D-030', area: 'Room 110', type: 'Room thermostat', before: 6, after: null,
      reason: 'The list no longer has it. It is marked as gone and still counts.',
    }]);
  });

  it('asks of which lists it is a revision where it has rows of several, and is told', async () => {
    const [ground, first] = [await file('ground.csv', 'Device;Room;Qty\nRoom thermostat;Hall;2\n'), await file('first.csv', 'Device;Room;Qty\nCard reader;Hall;3\n')];
    await runCommand(ground, '--output', at('two.json'));
    await runCommand(first, '--onto', at('two.json'), '--output', at('two.json'));
    const both = await file('both.csv', 'Device;Room;Qty\nRoom thermostat;Hall;2\nCard reader;Hall;1\n');
    expect(await runCommand(both, '--onto', at('two.json'))).toMatchObject({
      code: 2, out: '', warnings: expect.arrayContaining([expect.stringMatching(
        /“ground\.csv” 1 of 1 rows, “first\.csv” 1 of 1 rows; 0 of its rows are in none\..*--revises "ground\.csv"/)]) as string[],
    });
    const { out } = await runCommand(both, '--onto', at('two.json'), '--revises', 'ground.csv', '--revises', 'first.csv');
    expect(JSON.parse(out)).toMatchObject({ came: 0, changed: 1, went: 0, kept: 1 });
    const further = await runCommand(both, '--onto', at('two.json'), '--revises', '');
    expect(JSON.parse(further.out)).toMatchObject({ came: 2, changed: 0, went: 0, kept: 0 });
  });

  it('asks where rows of the schedule name no list and come again in part, with figures, and is told', async () => {
    const bare = JSON.parse(await readFile(given, 'utf8')) as { sheets: { devices: Cells[] } };
    bare.sheets.devices = bare.sheets.devices.map(({ source: _, ...cells }) => cells);
    await writeFile(at('bare.json'), JSON.stringify(bare));
    // 60 rows as the list has them: nothing is in doubt.
    expect(JSON.parse((await runCommand(list, '--onto', at('bare.json'))).out)).toMatchObject({ came: 0, changed: 0, went: 0, kept: 60 });
    // Of the 60 one went, and one came.
    expect(await runCommand(revised, '--onto', at('bare.json'))).toMatchObject({ code: 2, out: '', warnings: expect.arrayContaining([
      expect.stringMatching(/“unlisted” 59 of 60 rows; 1 of its rows are in none\..*--revises "unlisted"/),
    ]) as string[] });
    const told = JSON.parse((await runCommand(revised, '--onto', at('bare.json'), '--revises', 'unlisted')).out) as unknown;
    expect(told).toMatchObject({ came: 1, changed: 2, went: 1, kept: 57, lists: [{ name: '', rows: 60, matched: 59, revised: true }] });
    const further = JSON.parse((await runCommand(revised, '--onto', at('bare.json'), '--revises', '')).out) as unknown;
    expect(further).toMatchObject({ changed: 0, went: 0, came: 60 });
  });

  it('asks which device row a row of the list is, and is told', async () => {
    const [before, after] = [await file('before.csv', 'Device;Room;Qty\nRouter;Hall;3\nRouter;Bar;2\n'), await file('after.csv', 'Device;Room;Qty\nRouter;Hall;3\nRouter;Lounge;4\n')];
    await runCommand(before, '--output', at('before.json'));
    const { out, warnings } = await runCommand(after, '--onto', at('before.json'));
    // Until that is said, the 4 routers are undecided, and the row that they may be stays.
    expect(JSON.parse(out)).toMatchObject({
      read: 7, taken: 3, leftOut: 0, undecided: 4, came: 0, went: 0, kept: 2, asked: 1,
    });
    expect(warnings.join('\n')).toContain('are not in the schedule: 3.');
    expect(warnings.join('\n')).toContain('Router, Lounge: The list no longer has a row of this type elsewhere. Say whether it is one of them or new. '
      + 'Until then it is not in the schedule: --is after.csv!3=ROW says that it is one of the rows #2, --new after.csv!3 that it is a new one.');
    for (const fresh of ['3', 'all']) {
      const { out: said } = await runCommand(after, '--onto', at('before.json'), '--new', fresh);
      expect(JSON.parse(said)).toMatchObject({ taken: 7, undecided: 0, came: 1, went: 1, kept: 1, asked: 0 });
    }
    expect((await runCommand(after, '--onto', at('before.json'), '--new', '3', '--is', '3=#2')).warnings.join())
      .toMatch(/^--new 3: this row of the list is decided on already/);
    const told = await runCommand(after, '--onto', at('before.json'), '--is', '3=#2', '--output', at('after.json'));
    expect(JSON.parse(told.out)).toMatchObject({ came: 0, changed: 1, went: 0, kept: 1 });
    expect(await devicesIn(at('after.json'))).toMatchObject([{ area: 'Hall', qty: 3 }, { area: 'Lounge', qty: 4 }]);
    for (const [said, message] of [['9=#2', /there is no line 9/], ['1=#2', /no device is taken of this line/], ['3=#8', /no such device row/], ['3=E1', /no such device row/]] as const) {
      const refused = await runCommand(after, '--onto', at('before.json'), '--is', said);
      expect([refused.code, refused.warnings.join()]).toEqual([2, expect.stringMatching(message)]);
    }
  });

  it.each([
    ['a list that the schedule does not know', ['--onto', shared, '--revises', 'other.csv'], /--revises other\.csv: the schedule was not counted in such a list; its lists are “list\.csv”/],
    ['types beside it', ['--onto', shared, '--types', 'x.json'], /--types x\.json: names are looked up among the types/],
    ['a choice of what went without it', ['--gone', 'delete'], /--gone goes with --onto/],
    ['a word that it does not know', ['--onto', shared, '--gone', 'hide'], /--gone hide is not known\. Give one of mark, delete/],
  ])('refuses %s', async (_, words, message) => {
    const { code, out, warnings } = await runCommand(revised, ...words);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(warnings.join('\n')).toMatch(message);
  });
});
