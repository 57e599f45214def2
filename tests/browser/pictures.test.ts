import axe from 'axe-core';
import { afterEach, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { loadWords } from '../../src/words/index.ts';
import { setCells } from '../../src/schedule/index.ts';
import '../../components/pictures/schedule-picture.define.ts';
import type { SchedulePicture } from '../../components/pictures/schedule-picture.ts';
import { tokens } from '../../components/look/index.ts';
import { mount, removePictures, svgOf } from './support/mount-picture.ts';
import { frame } from './support/mount.ts';

afterEach(removePictures);

const words = (element: SchedulePicture) => svgOf(element).textContent;

test('a picture follows an edit, and undo, once in a frame', async () => {
  const { element, schedule } = await mount('run');
  expect(words(element)).toContain('The run is over.');
  expect(words(element)).toContain('19.64');
  let drawn = 0;
  const observer = new MutationObserver(() => { drawn += 1; });
  observer.observe(element.renderRoot, { childList: true, subtree: true });
  const id = schedule.rows('runs')[0]!.id;
  for (const length of [50, 40, 30]) {
    schedule.act('Length', setCells(schedule.document, [{ sheet: 'runs', id, key: 'length', value: length }]));
  }
  const last = schedule.rows('devices').at(-1)!.id;
  schedule.act('Distance', setCells(schedule.document, [{ sheet: 'devices', id: last, key: 'distance', value: 30 }]));
  await frame();
  observer.disconnect();
  // 30 m of 24.2 mΩ/m with 3 A: 2.18 V, by hand.
  expect(words(element)).toContain('21.82');
  expect(drawn).toBe(1);
  schedule.undo();
  await frame();
  expect(words(element)).toContain('19.64');
});

test('a picture speaks the language of its schedule, and is drawn anew in another', async () => {
  const { element, schedule } = await mount('run');
  const said = [
    ['de', 'Leitung W/1', '19,64', 'Bild speichern'], ['fr', 'Câble W/1', '19,64', 'Enregistrer le graphique'],
    ['en', 'Run W/1', '19.64', 'Save picture'],
  ] as const;
  for (const [language, title, voltage, save] of said) {
    const spoken = await loadWords(language);
    schedule.speak(spoken);
    element.words = spoken;
    await element.updateComplete;
    expect(svgOf(element).querySelector('.heading')!.textContent).toBe(title);
    expect(words(element)).toContain(voltage);
    expect(element.renderRoot.querySelector('.save')!.textContent.trim()).toBe(save);
  }
});

test.each(['de', 'fr'])('in %s no text of a picture is cut or touches a sign of its legend', async (language) => {
  const { element, schedule } = await mount('run');
  const spoken = await loadWords(language);
  schedule.speak(spoken);
  element.words = spoken;
  for (const kind of ['run', 'supplies', 'branches'] as const) {
    element.kind = kind;
    await element.updateComplete;
    const svg = svgOf(element);
    for (const text of svg.querySelectorAll('text')) {
      const { x, width, y, height } = text.getBBox();
      expect(
        [
          text.textContent, x >= 0, text.closest('[transform]') !== null || x + width <= 720,
          y + height <= svg.viewBox.baseVal.height + 1,
        ]
      )
        .toEqual([text.textContent, true, true, true]);
    }
    if (kind !== 'run') continue;
    // Signs and texts of the legend in turn; the note on the scales comes last, a line below.
    const legend = ([...svg.children] as SVGGraphicsElement[]).slice(-10, -1).map((each) => each.getBBox());
    for (const [index, { x, width }] of legend.slice(0, -1).entries()) {
      // The two strokes of the last sign cross.
      if (index !== 6) expect(legend[index + 1]!.x).toBeGreaterThan(x + width);
    }
  }
});

test('off the page it no longer follows, and on it again it does', async () => {
  const { element, schedule } = await mount('supplies');
  element.remove();
  const id = schedule.rows('supplies')[0]!.id;
  schedule.act('Rated', setCells(schedule.document, [{ sheet: 'supplies', id, key: 'rated', value: 4 }]));
  await frame();
  document.body.append(element);
  schedule.act('Rated', setCells(schedule.document, [{ sheet: 'supplies', id, key: 'rated', value: 5 }]));
  await frame();
  expect(words(element)).toContain('3.00\u00a0A of 5.00\u00a0A');
});

test('saving gives an SVG file that is valid by itself', async () => {
  await mount('run');
  const saved = new Promise<{ name: string; text: Promise<string> }>((resolve) => {
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
      resolve({ name: this.download, text: fetch(this.href).then((answer) => answer.text()) });
    });
  });
  await userEvent.click(page.getByRole('button', { name: 'Save picture' }));
  const { name, text } = await saved;
  vi.restoreAllMocks();
  expect(name).toBe('run-W-1.svg');
  const file = new DOMParser().parseFromString(await text, 'image/svg+xml');
  expect(file.querySelector('parsererror')).toBeNull();
  expect(file.documentElement.namespaceURI).toBe('http://www.w3.org/2000/svg');
  expect(file.querySelector('title')!.textContent).toBe('Voltage along run W/1');
  expect(file.querySelectorAll('style')).toHaveLength(1);
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([await text], { type: 'image/svg+xml' }));
  await image.decode();
  // 180 mm at 96 pixels to the inch.
  expect(image.naturalWidth).toBe(Math.round(180 / 25.4 * 96));
});

test.each(
  ['run', 'supplies', 'branches'] as const
)('%s: a name for screen readers, texts within the picture', async (kind) => {
  const { element } = await mount(kind);
  const svg = svgOf(element);
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.getAttribute('aria-label')).toBe(svg.querySelector('title')!.textContent);
  expect(svg.querySelector('desc')!.textContent.length).toBeGreaterThan(20);
  const box = svg.getBoundingClientRect();
  for (const text of svg.querySelectorAll('text')) {
    const { left, right, top, bottom } = text.getBoundingClientRect();
    expect([
      text.textContent,
      left >= box.left - 1 && right <= box.right + 1 && top >= box.top - 1 && bottom <= box.bottom + 1,
    ])
      .toEqual([text.textContent, true]);
  }
});

test('names along a run do not overlap: slanted lines of text are further apart than they are high', async () => {
  const { element } = await mount('run');
  const names = [...svgOf(element).querySelectorAll<SVGGElement>('g[transform^="rotate(-45"]')];
  expect(names).toHaveLength(12);
  const at = names.map((name) => Number(/-45 ([\d.]+)/.exec(name.getAttribute('transform')!)![1]));
  const height = names[0]!.getBBox().height;
  at.slice(1).forEach((place, index) => expect((place - at[index]!) * Math.SQRT1_2).toBeGreaterThan(height * 0.85));
});

test('in print a picture is 180 mm wide, so that a ruler reads it', async () => {
  const { element } = await mount('run');
  const rules = [...(element.renderRoot as ShadowRoot).adoptedStyleSheets].flatMap((sheet) => [...sheet.cssRules])
    .filter((rule): rule is CSSMediaRule => rule instanceof CSSMediaRule && rule.conditionText === 'print')
    .flatMap((rule) => [...rule.cssRules]);
  const print = rules.find((rule): rule is CSSStyleRule =>
    rule instanceof CSSStyleRule && rule.selectorText === '.picture')!;
  const svg = svgOf(element);
  svg.setAttribute('style', print.style.cssText);
  expect(svg.getBoundingClientRect().width).toBeCloseTo(180 / 25.4 * 96, 0);
  const [, , width, height] = svg.getAttribute('viewBox')!.split(' ').map(Number);
  expect(svg.getBoundingClientRect().height / svg.getBoundingClientRect().width).toBeCloseTo(height! / width!, 3);
});

/** Ratio of the luminances of two colours as computed styles give them, WCAG 2.2, «contrast ratio». */
function contrast(one: string, other: string): number {
  const luminance = (color: string) => {
    const [red, green, blue] = color.match(/[\d.]+/g)!.slice(0, 3).map((part) => Number(part) / 255)
      .map((part) => part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4);
    return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
  };
  const [darker, lighter] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (lighter! + 0.05) / (darker! + 0.05);
}

test.each(['light', 'dark'])('%s: every text stands out from the ground by 4.5 to 1', async (scheme) => {
  const { element } = await mount('run');
  element.style.colorScheme = scheme;
  const look = new CSSStyleSheet();
  look.replaceSync(tokens.cssText);
  (element.renderRoot as ShadowRoot).adoptedStyleSheets.push(look);
  const ground = getComputedStyle(element.renderRoot.querySelector('.sheet')!).backgroundColor;
  const texts = [...svgOf(element).querySelectorAll('text')];
  expect(texts.length).toBeGreaterThan(20);
  for (const text of texts) {
    expect(contrast(getComputedStyle(text).fill, ground), text.textContent).toBeGreaterThan(4.5);
  }
});

test.each(
  ['run', 'supplies', 'branches'] as const
)('%s: nothing for the accessibility checker to report', async (kind) => {
  const { element } = await mount(kind);
  const { violations } = await axe.run(element);
  expect(violations.map(({ id, help }) => `${id}: ${help}`)).toEqual([]);
});
