import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runChanges } from '../../src/cli/run-changes.ts';
import { runShare } from '../../src/cli/run-share.ts';
import { runTable } from '../../src/cli/run-table.ts';

let folder: string;
const schedule = (qty: number) => JSON.stringify({
  format: 'elv-load-schedule', version: 2, details: { revision: 'A' },
  sheets: {
    devices: [{ ref: 'D1', rail: 'R1', qty, unitDraw: 500 }], supplies: [
      { rail: 'R1', rated: 2.5, purpose: 'lighting' },
    ],
  },
});
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'lang-'));
  await writeFile(join(folder, 'few.schedule.json'), schedule(3));
  await writeFile(join(folder, 'many.schedule.json'), schedule(30));
});
afterAll(async () => { await rm(folder, { recursive: true }); });

async function run(command: typeof runTable, ...words: string[]) {
  let out = '';
  const warnings: string[] = [];
  const code = await command(words.map((word) => /\.(json|csv)$/.test(word) ? join(folder, word) : word), {
    out: (text) => { out += text; }, warn: (line) => { warnings.push(line.replaceAll(`${folder}/`, '')); },
  });
  return { code, out, warnings };
}

interface Printed {
  sheets: Record<string, Record<string, unknown>[]>;
  findings: { rule: string; severity: string; message: string }[];
  explain: { title: string; words: string; result: string }[];
}

describe('--lang', () => {
  it.each([
    'table', 'changes', 'share',
  ])('%s refuses a language that is not spoken, and names those that are', async (name) => {
    const command = { table: runTable, changes: runChanges, share: runShare }[name]!;
    for (const lang of ['it', '?', 'xx-YY']) {
      const { code, out, warnings } = await run(command, 'few.schedule.json', 'many.schedule.json', '--lang', lang);
      expect({ code, out, warnings })
        .toEqual({ code: 2, out: '', warnings: [`--lang ${lang} is not spoken. Give one of en, de, fr.`] });
    }
  });

  // 30 × 0.5 A = 15 A on 2.5 A.
  it.each([
    ['de', /Summe|Strombedarf|Versorgung/, '15,00 A', 'Strombedarf', 'überschritten'],
    ['fr', /alimentation|emploi/, '15,00 A', 'Courant d’emploi', 'dépassé'],
    ['de-CH', /Strombedarf|Versorgung/, '15.00 A', 'Strombedarf', 'überschritten'],
  ])('table in %s: messages and explanations are spoken, keys and numbers stay', async (
    lang, word, amps, demand, over
  ) => {
    const [english, spoken] = await Promise.all([[], ['--lang', lang]].map(async (option) => {
      const { code, out } = await run(
        runTable, 'many.schedule.json', '--explain', 'supplies:R1:demand', '--explain', 'supplies:R1:status', ...option
      );
      expect(code).toBe(0);
      return JSON.parse(out) as Printed;
    }));
    expect(spoken!.sheets).toEqual(english!.sheets);
    expect(spoken!.sheets.supplies![0]).toMatchObject({ purpose: 'lighting', demand: 15, status: 'over' });
    const found = ({ findings }: Printed) => findings.map(({ rule, severity }) => [rule, severity]);
    expect(found(spoken!)).toEqual(found(english!));
    const { message } = spoken!.findings.find(({ rule }) => rule === 'supply-over-usable')!;
    expect(message).toMatch(word);
    expect(message.replaceAll('\u00a0', ' ')).toContain(amps);
    expect(spoken!.explain.map(({ title, result }) => [title, result.replaceAll('\u00a0', ' ')])).toEqual([
      [demand, amps], [expect.any(String), over],
    ]);
  });

  it('a sheet as csv is the same in every language, and a load table is not', async () => {
    const [english, german] = await Promise.all([[], ['--lang', 'de']].map(async (option) =>
      run(runTable, 'many.schedule.json', '--format', 'csv', '--sheet', 'supplies', ...option)));
    expect(german!.out).toBe(english!.out);
    const { out } = await run(runTable, 'many.schedule.json', '--format', 'csv', '--whole', '--lang', 'de');
    expect(out).toContain('Übergabedokument');
    expect(out).toMatch(/Versorgungen[^]*"15,00"/);
  });

  it('sheets in CSV are read with headings of the language, as with English ones', async () => {
    await writeFile(join(folder, 'german.csv'), 'Schiene;Bemessungsstrom (A)\nR1;2,5\n');
    await writeFile(join(folder, 'english.csv'), 'Rail;Rated (A)\nR1;2,5\n');
    for (const file of ['german.csv', 'english.csv']) {
      const { code, out, warnings } = await run(runTable, file, '--lang', 'de');
      expect({ code, warnings }).toMatchObject({ code: 0 });
      expect((JSON.parse(out) as Printed).sheets.supplies).toMatchObject([{ rail: 'R1', rated: 2.5 }]);
    }
  });

  it('a file that cannot be read is refused in the language', async () => {
    await writeFile(join(folder, 'bad.csv'), 'ref,qty\nD1,many\n');
    const { code, warnings } = await run(runTable, 'bad.csv', '--lang', 'de');
    expect(code).toBe(2);
    expect(warnings).toEqual([expect.stringMatching(/^bad\.csv:2:2: Zeile 2.*many/)]);
  });

  it('changes are told in the language, and are the same for programs', async () => {
    const { out } = await run(runChanges, 'few.schedule.json', 'many.schedule.json', '--lang', 'de');
    expect(out.replaceAll('\u00a0', ' ')).toContain('Strombedarf 1,50 A → 15,00 A');
    expect(out).toContain('innerhalb der Grenzen → überschritten');
    const [english, french] = await Promise.all([[], ['--lang', 'fr']].map(async (option) =>
      run(runChanges, 'few.schedule.json', 'many.schedule.json', '--format', 'json', ...option)));
    expect(french!.out).toBe(english!.out);
  });

  it('a sharing gives its reasons in the language', async () => {
    const [english, german] = await Promise.all([[], ['--lang', 'de']].map(async (option) =>
      JSON.parse(
        (await run(runShare, 'many.schedule.json', '--over', 'supplies', '--whole-rows', ...option)).out
      ) as { leftOut: { code: string; reason: string }[] }));
    expect(german!.leftOut.map(({ code }) => code)).toEqual(english!.leftOut.map(({ code }) => code));
    expect(english!.leftOut[0]!.reason).toMatch(/^The row takes 15/);
    expect(german!.leftOut[0]!.reason).toMatch(/Zeile .*15/);
  });
});
