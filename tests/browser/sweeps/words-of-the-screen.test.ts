import { afterEach, describe, expect, test } from 'vitest';
import { userEvent } from 'vitest/browser';
import { changesSince } from '../../../components/drafts/changes-since.ts';
import type { DraftNotice } from '../../../components/drafts/draft-notice.ts';
import '../../../components/drafts/draft-notices.define.ts';
import type { ScheduleGrid } from '../../../components/grid/index.ts';
import type { ScheduleJoin } from '../../../components/schedule-join/schedule-join.ts';
import { writeSchedule } from '../../../src/exchange/index.ts';
import { LoadSchedule } from '../../../src/load-schedule.ts';
import { SCHEMA, SHEET_NAMES, type Content } from '../../../src/schedule/index.ts';
import { PSEUDO } from '../../support/pseudo-words.ts';
import { drop, GRID_KEY, mountElement, openSheet, part, parts, removeElements, sample, textOf } from '../element-mount.ts';
import { choose } from '../support/choose.ts';
import { demoContent } from '../support/demo-content.ts';
import { explainEach } from '../support/explain-each.ts';
import { PseudoElement } from '../support/pseudo-element.ts';
import { untranslated } from '../support/untranslated.ts';
import { openWork, paste } from '../work-support.ts';

const mounted: Element[] = [];

afterEach(() => {
  for (const element of mounted.splice(0)) element.remove();
  removeElements();
  localStorage.clear();
});

async function mountPseudo(content: Content, key: string | null = GRID_KEY): Promise<PseudoElement> {
  const element = new PseudoElement();
  element.lang = 'en';
  element.licenseKey = key;
  element.schedule = new LoadSchedule(content);
  element.style.cssText = 'display: block; block-size: 780px';
  document.body.append(element);
  mounted.push(element);
  await element.updateComplete;
  if (key !== null) await expect.poll(() => part(element, 'elv-schedule-grid td')).not.toBeNull();
  return element;
}

test('the search finds what is not said through the words', async () => {
  const element = await mountElement({ content: sample() });
  expect(untranslated(element)).toContain('elv-sheet-tabs span.title: Devices');
  expect(untranslated(element)).toContain('elv-schedule-grid th.: Select the whole sheet');
});

describe('what is on the screen is said through the words of the element', () => {
  test.each(SHEET_NAMES)('the sheet %s, and the explanation of each of its figures', async (sheet) => {
    const element = await mountPseudo(demoContent());
    const found = new Set<string>();
    await explainEach(element, sheet, [1, element.schedule.rows(sheet).length], (explanation) => {
      for (const each of untranslated(element, explanation)) found.add(each);
    });
    expect([...found]).toEqual([]);
    expect(untranslated(element)).toEqual([]);
  });

  test('device rows per rail and per branch, with rows that name none', async () => {
    const content = sample();
    const devices = [...content.sheets.devices!, { ref: 'D4', type: 'Lamp', qty: 1 }];
    const element = await mountPseudo({ ...content, sheets: { ...content.sheets, devices } });
    for (const grouping of ['rail', 'branch', 'way', 'run', 'area', 'type']) {
      await choose(element, 'groupings', grouping);
      await expect.poll(() => part(element, 'elv-schedule-grid .group')).not.toBeNull();
      expect(untranslated(element)).toEqual([]);
    }
  });

  test('the bars to find, replace and go to, with what they found and what cannot be taken', async () => {
    const element = await mountPseudo(sample());
    for (const [key, field] of [['h', 'elv-find-bar [name=text]'], ['g', 'elv-go-to-bar input']] as const) {
      await userEvent.click(part(element, '[data-command=find]')!);
      await expect.poll(() => part(element, 'elv-find-bar')).not.toBeNull();
      await userEvent.keyboard(`{Control>}${key}{/Control}`);
      await expect.poll(() => part(element, field)).not.toBeNull();
      for (const text of ['', 'nothing like it', '6', 'L1']) {
        await userEvent.fill(part(element, field)!, text);
        if (key === 'h') await userEvent.keyboard('{Shift>}{Enter}{/Shift}');
        expect(untranslated(element)).toEqual([]);
      }
    }
  });

  test('the menu, a text that is refused, a tag that no row has, the question before a deletion', async () => {
    const element = await mountPseudo(sample());
    const grid = part(element, 'elv-schedule-grid') as ScheduleGrid;
    const clean = () => { expect(untranslated(element)).toEqual([]); };
    grid.goTo(0, 'qty');
    await userEvent.keyboard('{Shift>}{F10}{/Shift}');
    await expect.poll(() => part(element, '.cell-menu')?.matches(':popover-open')).toBe(true);
    clean();
    await userEvent.keyboard('{Escape}many{Enter}');
    await expect.poll(() => part(element, '.note')?.matches(':popover-open')).toBe(true);
    clean();
    await userEvent.keyboard('{Escape}');
    grid.goTo(0, 'type');
    await userEvent.keyboard('Lampp{Enter}');
    await expect.poll(() => textOf(element, '.note')).toContain('Lampp');
    clean();
    grid.goTo(0, 'rail');
    await userEvent.keyboard('l 2{Enter}');
    await expect.poll(() => textOf(element, '.note')).toContain('l 2');
    clean();
    await element.select('supplies', 'L1', 'rail');
    await userEvent.keyboard('{Alt>}{Delete}{/Alt}');
    await expect.poll(() => part(element, 'dialog')).not.toBeNull();
    clean();
    await userEvent.keyboard('{Escape}');
  });

  test('empty sheets, with what they offer', async () => {
    const element = await mountPseudo({ details: {}, sheets: {} });
    element.demoSrc = 'demo.json';
    for (const sheet of SHEET_NAMES) {
      await openSheet(element, sheet);
      await element.updateComplete;
      await expect.poll(() => textOf(element, '.begin h3')).toContain(SCHEMA[sheet].title);
      await expect.poll(() => part(element, 'elv-first-steps ol')).not.toBeNull();
      expect(untranslated(element)).toEqual([]);
    }
  });

  test('an element without a key', async () => {
    const element = await mountPseudo(sample(), null);
    await expect.poll(() => part(element, '.card')).not.toBeNull();
    expect(untranslated(element)).toEqual([]);
  });

  test('actions, what is told of them, and what is refused', async () => {
    const element = await mountPseudo(sample());
    const seen = async (): Promise<void> => {
      await element.updateComplete;
      expect(untranslated(element)).toEqual([]);
    };
    await element.select('devices', 'D1', 'qty');
    const grid = part(element, 'elv-schedule-grid') as ScheduleGrid;
    for (const command of ['insertAbove', 'moveDown', 'removeRows', 'fillDown', 'clearCells', 'moveUp'] as const) {
      grid[command]();
      await seen();
    }
    for (const text of ['7\tL1\t\n8', 'Qty\tColour\tDemand\n7\tred\t3', '', 'seven\nx\t1', '2\n3\n4\n5\n6\n7']) {
      grid.pasteText(text);
      await seen();
    }
    await element.select('devices', 'D1', 'qty');
    await userEvent.keyboard('many{Enter}');
    await seen();
    await userEvent.keyboard('{Escape}{Control>}z{/Control}');
    await seen();
    await element.select('devices', 1, 'branch');
    await userEvent.keyboard('{Enter}');
    await seen();
    await userEvent.keyboard('{Escape}');
    await element.select('supplies', 'L1', 'rail');
    await userEvent.keyboard('L9{Enter}');
    await seen();
    expect(part(element, 'elv-sheet-view .said')!.textContent).toContain('L9');
    await element.select('supplies', 'L9', 'redundant');
    await userEvent.keyboard('{Enter}');
    await seen();
  });

  test('the form in which a finding is accepted, accepted findings, and findings of one severity', async () => {
    const element = await mountPseudo(sample());
    part(element, '.accept')!.click();
    await expect.poll(() => part(element, 'elv-acceptance-form form')).not.toBeNull();
    part(element, 'elv-acceptance-form button')!.click();
    await expect.poll(() => part(element, 'elv-acceptance-form .missing')).not.toBeNull();
    expect(untranslated(element)).toEqual([]);
    part(element, '[data-severity=over]')!.click();
    await element.updateComplete;
    expect(untranslated(element)).toEqual([]);
    element.schedule.accept(element.schedule.findings[0]!, { reason: 'because', name: 'somebody', date: '2026-11-25' });
    await expect.poll(() => part(element, '#findings-accepted')).not.toBeNull();
    part(element, '#findings-accepted summary')!.click();
    await expect.poll(() => part(element, '.withdraw')).not.toBeNull();
    expect(untranslated(element).filter((each) => !/because|somebody/.test(each))).toEqual([]);
  });

  test.each(['join', 'takeoff', 'shareOut', 'sizing', 'cases', 'variants', 'bill', 'measure', 'loadTable'] as const)('the work area %s', async (name) => {
    const element = await mountPseudo(demoContent());
    await openWork(element, name);
    // What takes its time to be worked out is there as well.
    await expect.poll(() => textOf(element, '.work:not([hidden]) .body').length, { timeout: 10_000 })
      .toBeGreaterThan(20);
    await element.updateComplete;
    expect(untranslated(element)).toEqual([]);
  });

  test.each(['oneLine', 'branches'])('the drawings, %s', async (view) => {
    const element = await mountPseudo(demoContent());
    await openWork(element, 'loadTable');
    part(element, `elv-load-table [data-view=${view}]`)!.click();
    await expect.poll(() => part(element, 'elv-drawings .sheet')).not.toBeNull();
    expect(untranslated(element)).toEqual([]);
  });

  test('rows of a file that wait for a person, those of an office, and one that cannot be read', async () => {
    const types = [{ type: 'Lamp', draw: '=300+50' }, { type: 'Sensor', draw: 100 }];
    const element = await mountPseudo({ ...sample(), sheets: { ...sample().sheets, types } });
    const list = 'Type,Draw (mA)\nLamp,300\nSensor,90\nBlind,5\n,4\n';
    drop(element, 'list.csv', list);
    await expect.poll(() => part(element, 'elv-rows-offer tbody')).not.toBeNull();
    const left = () => untranslated(element).filter((each) => !/: .{0,12}(?:Lamp|Sensor|Blind|list\.csv)/.test(each));
    expect(left()).toEqual([]);
    element.librarySrc = URL.createObjectURL(new Blob([list]));
    await expect.poll(() => part(element, 'elv-office-list [data-offer=show]')).not.toBeNull();
    part(element, 'elv-office-list [data-offer=show]')!.click();
    await expect.poll(() => part(element, 'elv-office-list elv-rows-offer')).not.toBeNull();
    element.librarySrc = URL.createObjectURL(new Blob(['Xyz\n1\n']));
    await expect.poll(() => part(element, 'elv-office-list [data-offer=again]')).not.toBeNull();
    expect(left()).toEqual([]);
  });

  test('a schedule that is joined, with every kind of conflict', async () => {
    const content = sample();
    const { types: [lamp, sensor] = [] } = content.sheets;
    const types = [{ ...lamp, draw: 2 }, { ...sensor, draw: 2 }];
    const element = await mountPseudo({ details: { panel: 'KP-3' }, sheets: { ...content.sheets, types } });
    await openWork(element, 'join');
    const theirs = writeSchedule({ ...content, details: { panel: 'KP-2' }, sheets: { types: [{ ...lamp, draw: 1 }] } });
    const area = part(element, 'elv-schedule-join') as ScheduleJoin;
    await area.open(new File([theirs], 'theirs.schedule.json'));
    await area.open(new File([writeSchedule(content)], 'base.schedule.json'), 'base');
    await area.open(new File(['Ref,Qty\nD1,2\n'], 'list.csv'), 'base');
    await expect.poll(() => part(element, 'elv-schedule-join tbody')).not.toBeNull();
    await element.updateComplete;
    expect(untranslated(element).filter((each) => !/theirs\.schedule|base\.schedule|list\.csv|KP-\d|Lamp|Sensor/.test(each))).toEqual([]);
  });

  test('a takeoff that was read, with what is unclear in it', async () => {
    const element = await mountPseudo(sample());
    await openWork(element, 'takeoff');
    paste(element, 'Area\tType\tQty\nJetty\tLamp\t3\nJetty\tGlow worm\tmany\nSum\t\t3');
    await expect.poll(() => part(element, 'elv-takeoff-reader table')).not.toBeNull();
    await element.updateComplete;
    expect(untranslated(element).filter((each) => !/: (?:Jetty|Glow worm|many|Sum|Area|Type|Qty)$/.test(each)))
      .toEqual([]);
  });

  test('a list that comes again, with what is chosen of it, and taken behind', async () => {
    const row = (ref: string, area: string, qty: number, source: string) => ({ ref, area, type: 'Lamp', qty, source });
    const devices = [
      row('D1', 'Hall', 3, 'a.csv: 2'), row('D2', 'Quay', 1, 'a.csv: 3'), row('D3', 'Pier', 4, 'b.csv: 2'),
      row('D4', 'Shed', 2, 'b.csv: 3'),
    ];
    const element = await mountPseudo({ ...sample(), sheets: { ...sample().sheets, devices } });
    await openWork(element, 'takeoff');
    // The refs of D1 and D2 are exchanged, D4 is gone, and what is at the jetty may be it.
    paste(element, 'Ref\tArea\tType\tQty\nD1\tQuay\tLamp\t1\nD2\tHall\tLamp\t2\nD3\tPier\tLamp\t4\n\tJetty\tLamp\t2');
    const seen = async (selector: string): Promise<void> => {
      await expect.poll(() => part(element, `elv-takeoff-reader ${selector}`)).not.toBeNull();
      await element.updateComplete;
      expect(untranslated(element).filter((each) => !/: (?:Ref|Area|Type|Qty|Jetty|D9|[ab]\.csv)$/.test(each))).toEqual([]);
    };
    await seen('.lists b');
    for (const box of parts(element, '.lists input')) if (!box.matches(':checked')) box.click();
    await seen('.lists legend:not(:has(b))');
    await seen('[data-revision=place]');
    part(element, 'elv-takeoff-reader [data-view=rows]')?.click();
    await seen('[data-revised=asked] [data-choose=same]');
    part(element, '[data-rows=asked]')!.click();
    await seen('[data-rows=asked][aria-pressed=true]');
    part(element, '[data-do=all-new]')!.click();
    await seen('[data-rows=differing]');
    part(element, '[data-rows=differing]')!.click();
    await seen('[data-revised=went]');
    part(element, '[data-revision=delete]')!.click();
    await seen('[data-revision=delete][aria-pressed=true]');
    for (const rows of ['came', 'changed', 'went', 'kept', 'differing']) {
      part(element, `[data-rows=${rows}]`)!.click();
      await seen(`[data-rows=${rows}][aria-pressed=true]`);
    }
    part(element, '[data-revision=behind]')!.click();
    await seen('[data-revision=behind][aria-pressed=true]');
  });

  test('a list that comes again and changes nothing', async () => {
    const devices = [{ ref: 'D1', area: 'Hall', type: 'Lamp', qty: 3, source: 'a.csv: 2' }];
    const element = await mountPseudo({ ...sample(), sheets: { ...sample().sheets, devices } });
    await openWork(element, 'takeoff');
    paste(element, 'Ref\tArea\tType\tQty\nD1\tHall\tLamp\t3');
    await expect.poll(() => part(element, '[data-rows=differing]')).not.toBeNull();
    expect(part(element, '.revised')).toBeNull();
    expect(untranslated(element)).toEqual([]);
    part(element, '[data-rows=went]')!.click();
    await expect.poll(() => part(element, '[data-rows=went][aria-pressed=true]')).not.toBeNull();
    expect(untranslated(element)).toEqual([]);
  });

  test('what is told about drafts, and what is different in one', async () => {
    const element = await mountPseudo(sample());
    const head = { id: 1, key: '', version: 1, at: 0, count: 0, ended: false, savedAt: 0 };
    const about = ['restored', 'unchecked', 'kept', 'changed', 'other', 'discarded', 'foreign', 'damaged'] as const;
    const plain = ['elsewhere', 'taken', 'unavailable', 'full', 'failed'] as const;
    const told: DraftNotice[] = [
      ...about.map((kind) => ({ kind, head })), { kind: 'saved', at: 0 }, ...plain.map((kind) => ({ kind })),
    ];
    const body = { base: new LoadSchedule().document.snapshot(), actions: [] };
    const keeper = { compare: () => Promise.resolve(changesSince(body, element.schedule)) };
    const notices = document.createElement('elv-draft-notices');
    Object.assign(notices, { keeper, notices: told, words: PSEUDO });
    element.shadowRoot!.append(notices);
    await notices.updateComplete;
    notices.shadowRoot!.querySelector<HTMLElement>('[data-offer=compare]')!.click();
    await expect.poll(() => notices.shadowRoot!.querySelectorAll('.changes table').length).toBeGreaterThan(1);
    expect(notices.shadowRoot!.querySelectorAll('li')).toHaveLength(told.length);
    expect(untranslated(element, notices.shadowRoot!)).toEqual([]);
  });

  test('the keys, the cautions and what a file dragged over the element is for', async () => {
    const element = await mountPseudo(sample());
    part(element, '#keys')!.showPopover();
    await expect.poll(() => textOf(element, '#keys')).not.toBe('');
    part(element, '.cautions summary')!.click();
    element.dispatchEvent(new DragEvent('dragenter', { dataTransfer: withFile(), bubbles: true, composed: true }));
    await element.updateComplete;
    expect(part(element, '.drop')).not.toBeNull();
    expect(untranslated(element)).toEqual([]);
  });
});

function withFile(): DataTransfer {
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(new File(['{}'], 'a.json'));
  return dataTransfer;
}
