import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const project = join(import.meta.dirname, '../..');
const modules = readdirSync(join(project, 'components'), { recursive: true, encoding: 'utf8' })
  .map((name) => `components/${name.replaceAll('\\', '/')}`).filter((name) => name.endsWith('.ts'));
const defining = modules.filter((name) => name.endsWith('.define.ts'));
const others = modules.filter((name) => !name.endsWith('.define.ts'));

/** Tags of elements, by the names of the modules that define them. */
const tags = [
  'elv-load-schedule', 'elv-schedule-grid', 'elv-sheet-view', 'elv-schedule-panel', 'elv-load-table',
  'elv-takeoff-reader',
];

/** Those of the elements that are defined; without Lit nothing knows of elements at all. */
function defined(): string[] {
  const { customElements } = globalThis as { customElements?: CustomElementRegistry };
  return tags.filter((tag) => customElements?.get(tag) !== undefined);
}

async function importAll(names: readonly string[]): Promise<void> {
  // One that throws names itself in the message of the test.
  for (const name of names) await expect(import(join(project, name)), name).resolves.toBeDefined();
}

describe('where there is no page', () => {
  test('every module of the elements is imported and defines nothing', async () => {
    expect(typeof document).toBe('undefined');
    expect(others.length).toBeGreaterThan(100);
    await importAll(others);
    expect(defined()).toEqual([]);
  }, 60_000);

  test('those that define an element do so, and may be imported twice', async () => {
    await importAll([...defining, ...defining]);
    expect(defined()).toEqual(tags);
  });
});

test.each(
  [
    'src/index.ts', 'src/electrical/index.ts', 'components/load-schedule/index.ts',
    'components/load-schedule/load-schedule.define.ts',
  ]
)(
  '%s is imported by Node itself', (entry) => {
    const words = [
      '--import', 'tsx', '--input-type=module', '--eval', `await import('./${entry}'); console.log('imported');`,
    ];
    expect(execFileSync(process.execPath, words, { cwd: project, encoding: 'utf8' })).toBe('imported\n');
  },
);
