import { describe, expect, it } from 'vitest';
import { findImportFaults } from '../../scripts/import-rules.mjs';

const faultsOf = (texts: Record<string, string>) => findImportFaults(new Map(Object.entries(texts)));

describe('direction of imports', () => {
  it.each([
    ['components use the engine', 'components/a/a.ts', 'import { x } from \'../../src/engine/index.ts\';'],
    ['the engine uses the schedule', 'src/engine/a.ts', 'export * from \'../schedule/index.ts\';'],
    ['a report uses findings', 'src/report/a.ts', 'import type { X } from \'../findings/index.ts\';'],
    ['a part uses itself', 'src/report/a.ts', 'import \'./b.ts\';'],
    ['the grid folder uses the grid', 'components/grid/a.ts', 'import css from \'handsontable/styles/x.css?inline\';'],
    ['the engine folder uses the engine', 'src/engine/a.ts', 'import { HyperFormula } from \'hyperformula\';'],
    ['the command uses Node', 'src/cli/a.ts', 'import \'node:fs\';'],
    ['tests use what they like', 'tests/a.test.ts', 'import \'handsontable\'; import \'../src/x/y.ts\';'],
    ['the door of the package shows all of src', 'src/index.ts', 'export { x } from \'./report/index.ts\';'],
    ['data', 'src/schedule/a.ts', 'import types from \'../../data/device-types.json\';'],
    ['words in a comment', 'src/electrical/a.ts', '// import \'../engine/index.ts\''],
  ])('allows: %s', (_name, file, text) => {
    expect(faultsOf({ [file]: text })).toEqual([]);
  });

  it.each([
    ['upwards', 'src/electrical/a.ts', 'import { x } from \'../engine/index.ts\';', 'electrical may not import engine'],
    [
      'types too', 'src/schedule/a.ts', 'import type { X } from \'../engine/index.ts\';',
      'schedule may not import engine',
    ],
    ['later', 'src/engine/a.ts', 'await import(\'../../components/a/a.ts\');', 'engine may not import components'],
    ['re-exported', 'src/schedule/a.ts', 'export { x } from \'../report/a.ts\';', 'schedule may not import report'],
    ['beside', 'src/cli/a.ts', 'import \'../../components/a/a.ts\';', 'cli may not import components'],
    ['grid in src', 'src/engine/a.ts', 'import \'handsontable/base\';', 'only components/grid/ imports handsontable'],
    [
      'grid elsewhere', 'components/look/a.ts', 'import \'handsontable\';',
      'only components/grid/ imports handsontable',
    ],
    ['engine', 'components/grid/a.ts', 'import \'hyperformula\';', 'only src/engine/ imports hyperformula'],
    ['element', 'src/report/a.ts', 'import { html } from \'lit\';', 'only components/ imports lit'],
    ['Node', 'src/exchange/a.ts', 'import \'node:fs\';', 'only src/cli imports Node'],
    ['the door from within', 'src/report/a.ts', 'import { x } from \'../index.ts\';', 'report may not import index.ts'],
    ['tests', 'src/report/a.ts', 'import \'../../tests/support/a.ts\';', 'only src, components and data'],
    ['unknown part', 'src/other/a.ts', 'import \'../engine/index.ts\';', 'other is no part'],
  ])('refuses: %s', (_name, file, text, message) => {
    const [fault, ...rest] = faultsOf({ [file]: text });
    expect(rest).toEqual([]);
    expect(fault).toMatchObject({ file, message: expect.stringContaining(message) as string });
  });

  it('refuses a circle of parts on one level', () => {
    const faults = faultsOf({
      'src/report/a.ts': 'import \'../findings/a.ts\';',
      'src/findings/a.ts': 'import \'../exchange/a.ts\';',
      'src/exchange/a.ts': 'import \'../report/b.ts\';',
      'src/allocation/a.ts': 'import \'../report/b.ts\';',
    });
    expect(faults.map(({ file }) => file)).toEqual(['src/report', 'src/findings', 'src/exchange']);
  });

  it('refuses a circle of files in one part, types among them, and tells it once', () => {
    const faults = faultsOf({
      'src/engine/a.ts': 'import { b } from \'./inner/b.ts\'; import \'./d.ts\';',
      'src/engine/inner/b.ts': 'export const c = () => import(\'../c.ts\');',
      'src/engine/c.ts': 'import type { A } from \'./a.ts\';',
      'src/engine/d.ts': '',
      'src/engine/e.ts': 'import \'./a.ts\';',
    });
    expect(faults).toEqual([{
      file: 'src/engine/a.ts', specifier: 'src/engine/inner/b.ts',
      message: 'the files import each other in a circle: src/engine/a.ts → src/engine/inner/b.ts → src/engine/c.ts → src/engine/a.ts',
    }]);
  });
});
