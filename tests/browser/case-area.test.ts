import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import type { LoadScheduleElement } from '../../components/load-schedule/load-schedule.ts';
import type { Content } from '../../src/schedule/index.ts';
import { mountElement, openSheet, part, parts, removeElements, textOf } from './element-mount.ts';
import { paste, putOnClipboard } from './support/clipboard.ts';
import { openWork, press } from './work-support.ts';

beforeEach(() => { localStorage.clear(); });
afterEach(removeElements);

/**
 * P1 may be used for 10 A: blinds 6 × 1.5 A = 9 A, lamps 4 × 0.5 A = 2 A, a fan of no group 0.3 A. P2 has 2 A of
 * lamps on 10 A.
 */
const panel = (): Content => ({
  details: {},
  sheets: {
    types: [
      { type: 'Blind', draw: 1500, nodes: 0, diversity: 0.25, group: 'blinds' },
      { type: 'Lamp', draw: 500, nodes: 0, group: 'lamps' }, { type: 'Fan', draw: 300, nodes: 0 },
    ],
    supplies: [{ rail: 'P1', rated: 10, target: 0.8 }, { rail: 'P2', rated: 10 }],
    devices: [
      { ref: 'D1', type: 'Blind', qty: 6, rail: 'P1' }, { ref: 'D2', type: 'Lamp', qty: 4, rail: 'P1' },
      { ref: 'D3', type: 'Fan', qty: 1, rail: 'P1' }, { ref: 'D4', type: 'Lamp', qty: 4, rail: 'P2' },
    ],
    cases: [{ case: 'evening' }, { case: 'wind alarm' }],
    factors: [{ case: 'evening', group: 'lamps', factor: 0.5 }, { case: 'wind alarm', group: 'blinds', factor: 1 }],
  },
});

const field = (element: Element, group: string, name: string) =>
  (parts(element, '.matrix input') as HTMLInputElement[])
    .find(({ dataset }) => dataset.group === group && dataset.case === name)!;
const factors = (element: LoadScheduleElement) => element.schedule.rows('factors').map(({ cells }) => cells);
const plain = (elements: readonly Element[]) => elements.map((each) => each.textContent.trim().replace(/\s+/g, ' '));

function pasteInto(target: HTMLElement, text: string): void {
  const clipboardData = new DataTransfer();
  clipboardData.setData('text/plain', text);
  target.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true, composed: true }));
}

describe('the matrix of factors', () => {
  async function mountMatrix(content = panel(), attributes = {}): Promise<LoadScheduleElement> {
    const element = await mountElement({ content, attributes });
    await openWork(element, 'cases');
    await press(element, '[data-view=factors]');
    await expect.poll(() => part(element, '.matrix')).not.toBeNull();
    return element;
  }

  test('factors are typed as a percentage or a share, with point or comma, and taken back one by one', async () => {
    const element = await mountMatrix();
    const before = element.value;
    const values = ['evening', 'wind alarm'].map((name) => field(element, 'lamps', name).value);
    expect(values).toEqual(['50 %', '']);
    expect(field(element, 'lamps', 'wind alarm').placeholder).toBe('own');
    for (const [text, shown, share] of [['25 %', '25 %', 0.25], ['0.3', '30 %', 0.3], ['0,35', '35 %', 0.35]] as const) {
      await userEvent.click(field(element, 'blinds', 'evening'));
      await userEvent.keyboard(`${text}{Enter}`);
      await expect.poll(() => field(element, 'blinds', 'evening').value).toBe(shown);
      expect(factors(element)).toContainEqual({ case: 'evening', group: 'blinds', factor: share });
    }
    // Enter has gone down to the lamps. What is emptied is no factor any more: the row is gone.
    await userEvent.keyboard('{Delete}{Enter}');
    await expect.poll(() => factors(element).map(({ group }) => group)).toEqual(['blinds', 'blinds']);
    for (let steps = 0; steps < 4; steps += 1) element.schedule.undo();
    expect(element.value).toBe(before);
  });

  test('a factor above 1 is refused with the reciprocal, stays to be mended, and Escape gives it up', async () => {
    const element = await mountMatrix();
    await userEvent.click(field(element, 'blinds', 'wind alarm'));
    await userEvent.keyboard('1.6{Enter}');
    await expect.poll(() => textOf(element, 'elv-factor-matrix .problems')).toContain('type 0.625');
    expect(field(element, 'blinds', 'wind alarm').getAttribute('aria-invalid')).toBe('true');
    expect(factors(element)).toHaveLength(2);
    await userEvent.click(field(element, 'blinds', 'wind alarm'));
    await userEvent.keyboard('{Escape}');
    await expect.poll(() => field(element, 'blinds', 'wind alarm').value).toBe('100 %');
    expect(part(element, 'elv-factor-matrix .problems')).toBeNull();
    await userEvent.keyboard('{Escape}');
    await expect.poll(() => part(element, 'elv-case-area')!.hidden).toBe(true);
  });

  test('what was refused is told with its place, and goes with its case', async () => {
    const element = await mountMatrix();
    const problems = () => plain(parts(element, 'elv-factor-matrix .problems li'));
    await userEvent.click(field(element, 'lamps', 'wind alarm'));
    await userEvent.keyboard('many{Enter}');
    await expect.poll(problems).toEqual([expect.stringMatching(/^lamps in “wind alarm”: “many” is not a number/)]);
    await userEvent.click(part(element, '[data-hours="0"]')!);
    await userEvent.keyboard('25{Enter}');
    await expect.poll(problems).toEqual([
      expect.stringMatching(/^Hours a day in “evening”: “25”/), expect.stringContaining('lamps in “wind alarm”: '),
    ]);
    await userEvent.click(parts(element, '[data-do=remove]')[1]!);
    await expect.poll(problems).toEqual([expect.stringContaining('in “evening”')]);
  });

  test('what counts otherwise than a field says is said: a formula, an unknown factor, one given twice, a second name', async () => {
    const content = panel();
    const element = await mountMatrix({
      details: {}, sheets: {
        ...content.sheets, cases: [{ case: 'evening', hours: 20 }, { case: 'wind alarm', hours: 5 }, { case: 'evening' }],
        factors: [
          { case: 'evening', group: 'blinds', factor: '=1/4' }, { case: 'evening', group: 'lamps' },
          { case: 'wind alarm', group: 'lamps', factor: 1 }, { case: 'wind alarm', group: 'lamps', factor: 0.5 },
        ],
      },
    });
    const about = (group: string, name: string, at = 0) =>
      ((parts(element, '.matrix input') as HTMLInputElement[])
        .filter(({ dataset }) => dataset.group === group && dataset.case === name)[at]!.parentElement!);
    const said = (...of: Parameters<typeof about>) => [about(...of).querySelector('input')!.value, ...plain([about(...of)])];
    expect(said('blinds', 'evening')).toEqual(['=1/4', '= 25 %']);
    expect(said('lamps', 'evening')).toEqual(['', 'unknown']);
    expect(about('lamps', 'evening').querySelector('input')!.placeholder).toBe('');
    expect(said('lamps', 'wind alarm')).toEqual(['100 %', 'given twice']);
    // Its factors are those of the first of its name: in it everything is as the diversity of rows says.
    expect(said('blinds', 'evening', 1)).toEqual(['', '']);
    expect(textOf(element, '[data-hours=all]')).toBe('25.0 h in all');
    expect(part(element, '[data-hours=all]')!.classList.contains('unsure')).toBe(true);
  });

  test('one value that is pasted takes the place of what stands, wherever in the field the pointer was', async () => {
    const element = await mountMatrix();
    const lamps = () => field(element, 'lamps', 'evening');
    await putOnClipboard('0,7');
    await userEvent.click(lamps());
    lamps().setSelectionRange(1, 1);
    await paste();
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => lamps().value).toBe('70 %');
    await putOnClipboard('0.2\t0.3');
    await userEvent.click(lamps());
    await paste();
    await expect.poll(() => lamps().value).toBe('20 %');
    expect([lamps().selectionStart, lamps().selectionEnd]).toEqual([0, 4]);
  });

  test('what is not known may be worse than the worst that is known', async () => {
    const { sheets } = panel();
    const element = await mountMatrix({
      details: {}, sheets: { ...sheets, supplies: [...sheets.supplies!, { rail: 'P3' }] },
    });
    await expect.poll(() => textOf(element, '[data-worst="0"]')).toBe('36 % incomplete P11 not known');
    expect(textOf(element, '[data-worst="1"]')).toBe('113 % over limit P11 not known');
  });

  test('arrows and Enter go from field to field', async () => {
    const element = await mountMatrix();
    const active = () => {
      const { activeElement } = field(element, 'lamps', 'evening').getRootNode() as ShadowRoot;
      const { group, case: name } = (activeElement as HTMLElement).dataset;
      return `${group} ${name}`;
    };
    await userEvent.click(field(element, 'blinds', 'evening'));
    await userEvent.keyboard('{ArrowRight}');
    expect(active()).toBe('blinds wind alarm');
    await userEvent.keyboard('{ArrowDown}');
    expect(active()).toBe('lamps wind alarm');
    await userEvent.keyboard('{ArrowLeft}');
    expect(active()).toBe('lamps evening');
    await userEvent.keyboard('0.8{Shift>}{Enter}{/Shift}');
    expect(active()).toBe('blinds evening');
    await expect.poll(() => field(element, 'lamps', 'evening').value).toBe('80 %');
  });

  test('undo and redo are heard in a field once what was typed is taken; before that a field takes its own back', async () => {
    const element = await mountMatrix();
    const before = element.value;
    await userEvent.click(field(element, 'blinds', 'evening'));
    await userEvent.keyboard('0.25{Enter}0.9{Enter}');
    await expect.poll(() => field(element, 'lamps', 'evening').value).toBe('90 %');
    await userEvent.keyboard('{Control>}z{/Control}');
    await expect.poll(() => field(element, 'lamps', 'evening').value).toBe('50 %');
    await userEvent.keyboard('{Control>}z{/Control}');
    await expect.poll(() => element.value).toBe(before);
    expect(part(element, 'elv-case-area')!.hidden).toBe(false);
    await userEvent.keyboard('{Control>}y{/Control}');
    await expect.poll(() => field(element, 'blinds', 'evening').value).toBe('25 %');
    // What is in a field is typed over, also after it changed by itself.
    await userEvent.click(field(element, 'blinds', 'evening'));
    await userEvent.keyboard('0.7');
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(element.schedule.undoLabel).toBe('Factor of blinds in “evening”');
    // The button goes with its case, and the focus is in a field in which nothing was typed.
    await press(element, '[data-do=remove]');
    expect(element.schedule.rows('cases')).toHaveLength(1);
    await userEvent.keyboard('{Control>}z{/Control}');
    await expect.poll(() => element.schedule.rows('cases')).toHaveLength(2);
  });

  test('what is being typed is saved with Ctrl+S', async () => {
    const element = await mountMatrix();
    const saved = new Promise<string>((resolve) => {
      element.addEventListener('elv-save', ({ value }) => { resolve(value); });
    });
    await userEvent.click(field(element, 'blinds', 'evening'));
    await userEvent.keyboard('0.15{Control>}s{/Control}');
    expect(await saved).toContain('"factor":0.15');
  });

  test('a block is pasted as one action; one that does not fit, or holds something else, changes nothing', async () => {
    const element = await mountMatrix();
    const before = element.value;
    pasteInto(field(element, 'blinds', 'evening'), '25 %\t0,9\n1\t\n');
    await expect.poll(() => factors(element)).toEqual([
      { case: 'evening', group: 'lamps', factor: 1 }, { case: 'wind alarm', group: 'blinds', factor: 0.9 },
      { case: 'evening', group: 'blinds', factor: 0.25 },
    ]);
    element.schedule.undo();
    expect(element.value).toBe(before);
    pasteInto(field(element, 'blinds', 'evening'), '25 %\t1.7\nmany\t0');
    await expect.poll(() => plain(parts(element, 'elv-factor-matrix .problems li'))).toEqual([
      'Nothing was pasted.', expect.stringContaining('blinds in “wind alarm”: “1.7” is more than 1') as string,
      expect.stringContaining('lamps in “evening”: “many” is not a number') as string,
    ]);
    pasteInto(field(element, 'lamps', 'evening'), '1\t1\n1\t1');
    await expect.poll(() => textOf(element, 'elv-factor-matrix .problems'))
      .toContain('the block has 2 × 2 cells, and from here there are 1 group and 2 cases');
    expect(element.value).toBe(before);
  });

  test('a whole matrix is pasted by its headings, in whatever order; a name that is not there is refused', async () => {
    const element = await mountMatrix();
    const before = element.value;
    pasteInto(field(element, 'lamps', 'wind alarm'), '\twind alarm\tevening\nlamps\t0,9\t20 %\nblinds\t\t0.1\n');
    await expect.poll(() => ['evening', 'wind alarm'].map((name) => ['blinds', 'lamps'].map((group) => field(element, group, name).value)))
      .toEqual([['10 %', '20 %'], ['', '90 %']]);
    element.schedule.undo();
    expect(element.value).toBe(before);
    pasteInto(field(element, 'blinds', 'evening'), '\tstorm\nlamps\t0.9');
    await expect.poll(() => textOf(element, 'elv-factor-matrix .problems')).toContain('“storm” is not a number');
    expect(element.value).toBe(before);
  });

  test('from no cases and no groups to a matrix that works', async () => {
    const { details, sheets: { cases: _cases, factors: _factors, types, ...sheets } } = panel();
    const content = { details, sheets: { ...sheets, types: types!.map(({ group: _group, ...type }) => type) } };
    const element = await mountElement({ content });
    // Whoever has no cases yet begins with them.
    await openWork(element, 'cases');
    await expect.poll(() => textOf(element, 'elv-factor-matrix p')).toContain('There are no cases yet.');
    await userEvent.click(part(element, 'elv-group-list [data-type=Blind]')!);
    await userEvent.keyboard('blinds{Enter}');
    await expect.poll(() => element.schedule.rows('types')[0]!.cells.group).toBe('blinds');
    await userEvent.click(part(element, 'elv-factor-matrix [name=case]')!);
    await userEvent.keyboard('wind alarm{Enter}');
    await expect.poll(() => element.schedule.rows('cases').map(({ cells }) => cells)).toEqual([{ case: 'wind alarm' }]);
    await userEvent.keyboard('wind alarm{Enter}');
    await expect.poll(() => textOf(element, 'elv-factor-matrix .problems'))
      .toContain('There is a case “wind alarm” already.');
    await userEvent.click(part(element, '[data-mark=together]')!);
    await userEvent.click(part(element, '[data-hours]')!);
    await userEvent.keyboard('0.5{Enter}');
    await userEvent.click(field(element, 'blinds', 'wind alarm'));
    await userEvent.keyboard('1{Enter}');
    await expect.poll(() => element.schedule.rows('cases')[0]!.cells)
      .toEqual({ case: 'wind alarm', together: true, hours: 0.5 });
    // 9 A + 2 A + 0.3 A on 10 A.
    await expect.poll(() => textOf(element, '[data-worst="0"]')).toBe('113 % over limit P1');
    await press(element, '[data-do=remove]');
    expect([element.schedule.rows('cases'), element.schedule.rows('factors')]).toEqual([[], []]);
  });

  test('a profile of 24 hours makes 24 cases in one action', async () => {
    const element = await mountMatrix();
    const before = element.value;
    await press(element, '[data-do=takeProfile]');
    const hours = (share: (hour: number) => number) =>
      Array.from({ length: 24 }, (_none, hour) => share(hour)).join('\t');
    const table = 'elv-profile-form textarea';
    await userEvent.fill(part(element, table)!, `lamps\t${hours((hour) => hour < 7 ? 0 : 1.5)}`);
    await expect.poll(() => textOf(element, 'elv-profile-form .problems')).toContain('Row 1, column 9 (07–08)');
    await userEvent.fill(part(element, table)!, `lamps\t${hours((hour) => hour < 7 ? 0 : 0.75)}`);
    await expect.poll(() => textOf(element, 'elv-profile-form [role=status]')).toBe('');
    await userEvent.selectOptions(part(element, '[data-option=unit]')!, 'W');
    await userEvent.fill(part(element, table)!, `lamps\t${hours(() => 5)}\nLAMPS\t${hours(() => 5)}`);
    await expect.poll(() => textOf(element, 'elv-profile-form [role=status]')).toMatch(
      /^Each power counts as a share of the greatest in its row, .*No load belongs to these groups, .*: “LAMPS”\. /);
    await userEvent.selectOptions(part(element, '[data-option=unit]')!, 'share');
    await userEvent.fill(part(element, table)!, `lamps\t${hours((hour) => hour < 7 ? 0 : 0.75)}`);
    await press(element, '[data-do=profile]');
    expect(element.schedule.rows('cases')).toHaveLength(26);
    expect(element.schedule.rows('cases').at(-1)!.cells).toEqual({ case: '23–24', hours: 1 });
    expect(factors(element)).toHaveLength(26);
    await expect.poll(() => field(element, 'lamps', '07–08').value).toBe('75 %');
    element.schedule.undo();
    expect(element.value).toBe(before);
    // A table that is pasted beside the fields is taken for one.
    pasteInto(part(element, '.matrix')!, `blinds\t${hours(() => 0.5)}`);
    await expect.poll(() => textOf(element, '[data-do=profile]')).toBe('Make 24 cases');
  });

  test('who may not change anything sees the factors and can change none', async () => {
    const element = await mountMatrix(panel(), { readonly: '' });
    const before = element.value;
    expect(field(element, 'blinds', 'evening').readOnly).toBe(true);
    const offered = ['add', 'takeProfile', 'remove'].map((name) => part(element, `[data-do=${name}]`));
    expect(offered).toEqual([null, null, null]);
    expect(parts(element, '[data-mark]').every((each) => (each as HTMLInputElement).disabled)).toBe(true);
    pasteInto(field(element, 'blinds', 'evening'), '1\t1');
    expect(element.value).toBe(before);
  });
});

describe('the comparison', () => {
  test('the worst comes first and is marked, in word and shape; a cell says what it is made of', async () => {
    const element = await mountElement({ content: panel() });
    await openSheet(element, 'supplies');
    await userEvent.click(part(element, '[data-sheet=supplies]')!);
    await userEvent.keyboard('{F7}');
    await expect.poll(() => plain(parts(element, '.loadings tbody th button'))).toEqual(['P1', 'P2']);
    const labels = parts(element, '.loadings .cell').map((each) => each.getAttribute('aria-label')!.replace(/\s/g, ' '));
    // Evening: 2.25 + 1 + 0.3 A; wind alarm: 9 + 2 + 0.3 A; by own diversity: 2.25 + 2 + 0.3 A. P2: 1 A, 2 A, 2 A.
    expect(labels).toEqual([
      'P1, evening: 36 % within limits', 'P1, wind alarm: 113 % over limit, worst',
      'P1, own diversity: 46 % within limits', 'P2, evening: 10 % within limits',
      'P2, wind alarm: 20 % within limits', 'P2, own diversity: 20 % within limits, worst',
    ]);
    const cell = parts(element, '.loadings .cell')[1]!;
    expect([cell.querySelectorAll('.mark.over').length, cell.querySelector('.word')?.textContent]).toEqual([1, 'over limit']);
    await userEvent.click(parts(element, '.loadings .cell')[0]!);
    await userEvent.keyboard('{ArrowRight}');
    await expect.poll(() => textOf(element, '#why'))
      .toContain('11.30 A ÷ 10.00 A usable = 113 %. That is 1.30 A too much.');
    expect(plain(parts(element, '#why tbody td'))).toEqual([
      'blinds', '9.00 A connected × 100 %', '9.00 A',
      'lamps', 'own diversity of its rows, of 2.00 A connected', '2.00 A',
      'of no group', 'own diversity of its rows, of 0.30 A connected', '0.30 A',
    ]);
    await press(element, '#why [data-do=row]');
    await expect.poll(() => part(element, 'elv-case-area')!.hidden).toBe(true);
    expect(part(element, '[data-sheet=supplies]')!.getAttribute('aria-selected')).toBe('true');
  });

  test('words stay in their cell, and no word is broken, in every language', async () => {
    const { sheets } = panel();
    const element = await mountElement({
      content: {
        details: {}, sheets: {
          ...sheets, cases: [{ case: 'Windalarm' }, { case: 'Beleuchtung' }, { case: 'Reinigung' }, { case: 'Nachtabsenkung' }],
          factors: [{ case: 'Windalarm', group: 'blinds', factor: 0.8 }, { case: 'Beleuchtung', group: 'blinds', factor: 1 }],
        },
      },
    });
    const linesOf = (each: Element) => {
      const range = document.createRange();
      range.selectNodeContents(each);
      return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
    };
    await openWork(element, 'cases');
    const titles = { de: 'Lastfälle', fr: 'Cas de charge', en: 'Cases' };
    for (const width of ['1200px', '640px']) {
      element.style.inlineSize = width;
      for (const [language, title] of Object.entries(titles)) {
        element.lang = language;
        await expect.poll(() => textOf(element, 'elv-case-area h2')).toBe(title);
        await press(element, '[data-view=compare]');
        await expect.poll(() => parts(element, '.loadings .word').length).toBeGreaterThan(0);
        for (const cell of parts(element, '.loadings .cell')) {
          expect([cell.textContent, cell.scrollWidth <= cell.clientWidth]).toEqual([cell.textContent, true]);
        }
        await press(element, '[data-view=factors]');
        await expect.poll(() => parts(element, '.matrix thead .link')).toHaveLength(4);
        for (const name of parts(element, '.matrix thead .link')) {
          expect([name.textContent, linesOf(name)]).toEqual([name.textContent, 1]);
        }
      }
    }
  });

  test('own diversity has no cell where every case says of all that is on a supply how much is on', async () => {
    const { details, sheets } = panel();
    const more = [...sheets.factors!, { case: 'wind alarm', group: 'lamps', factor: 0 }];
    const element = await mountElement({ content: { details, sheets: { ...sheets, factors: more } } });
    await openWork(element, 'cases');
    await expect.poll(() => parts(element, '[data-row=P2] .cell').length).toBe(2);
    expect(parts(element, '[data-row=P1] .cell')).toHaveLength(3);
  });
});

describe('what matters', () => {
  test('of what is known in part only it is said that it may be more', async () => {
    const { sheets } = panel();
    const element = await mountElement({
      content: { details: {}, sheets: { ...sheets, devices: [...sheets.devices!, { ref: 'D5', qty: 1, rail: 'P1' }] } },
    });
    await openWork(element, 'cases');
    await press(element, '[data-view=matters]');
    await expect.poll(() => textOf(element, 'elv-what-matters .sentence')).toContain(
      'its demand is 11.30 A of 10.00 A, ≥ 113 %. Some of it is not known, so that it may be more.');
    expect(textOf(element, '[data-option=row] option')).toBe('P1: ≥ 113 %');
  });

  test('groups, types and rows by what they contribute, the factors that just do, and the least change', async () => {
    const element = await mountElement({ content: panel() });
    const before = element.value;
    await openWork(element, 'cases');
    await press(element, '[data-view=matters]');
    const line = (group: string) => plain(parts(element, `.groups tr[data-group="${group}"] td`));
    await expect.poll(() => textOf(element, '[data-goal=limit]'))
      .toContain('The least change within its limit: blinds from 100 % to at most 85.5 %.');
    expect(textOf(element, 'elv-what-matters .sentence'))
      .toContain('P1: in “wind alarm” its demand is 11.30 A of 10.00 A, 113 %.');
    // (10 − 2.3) ÷ 9 = 0.8556 and (8 − 2.3) ÷ 9 = 0.6333; the others of the lamps take 9.3 A: (10 − 9.3) ÷ 2 = 0.35.
    expect(line('blinds')).toEqual(['9.00 A', '80 %', '', '100 %', '+9.0 %', '113 %', '85.5 %', '63.3 %']);
    expect(line('lamps')).toEqual(['2.00 A', '18 %', '', 'own, 100 %', '+2.0 %', '113 %', '35 %', 'not by it alone']);
    expect(line('')).toEqual(['0.30 A', '3 %', '', 'own', '–', '–', '–', '–']);
    expect(plain(parts(element, '[data-list=types] tbody button'))).toEqual(['Blind', 'Lamp', 'Fan']);
    expect(plain(parts(element, '[data-list=rows] tbody button'))).toEqual(['D1', 'D2', 'D3']);
    await press(element, '[data-goal=limit] [data-set=blinds]');
    await expect.poll(() => textOf(element, 'elv-what-matters .sentence')).toContain('its demand is 9.995 A of 10.000 A, 99.95 %');
    expect(factors(element)[1]).toEqual({ case: 'wind alarm', group: 'blinds', factor: 0.855 });
    element.schedule.undo();
    expect(element.value).toBe(before);
  });
});
