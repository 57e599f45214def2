import { neededArea } from '../../electrical/index.ts';
import type { LoadSchedule } from '../../load-schedule.ts';
import { MODULE, MODULES, MountedParts, proposeRails } from '../../mounting/index.ts';
import { degrees, percent, roundedUp } from '../../words/index.ts';
import { widthText } from './rail-figures.ts';

/**
 * What enclosures, by the ids of their rows, need for all that is entered: mounting rails of a few lengths with the
 * reserve, and the cooling surface for the heat, each in plain sentences; none where nothing is mounted.
 */
export function proposalSentences(schedule: LoadSchedule, ids: readonly number[]): string[] {
  const mounted = new MountedParts(schedule.document, schedule.figures);
  return ids.flatMap((id) => [...railSentences(schedule, mounted, id), ...heatSentences(schedule, id)]);
}

function railSentences(schedule: LoadSchedule, mounted: MountedParts, id: number): string[] {
  const { words } = schedule;
  const enclosure = schedule.value('enclosures', id, 'enclosure');
  const [own, reserve] = [schedule.value('enclosures', id, 'railLength'), schedule.value('enclosures', id, 'reserve')];
  if (typeof enclosure !== 'string' || typeof reserve !== 'number') return [];
  const { parts, lacking } = mounted.in(enclosure, Infinity);
  const unknown = lacking === 0 ? [] : [words.say(
    '{enclosure}: {n, plural, one {# part has} other {# parts have}} no width yet and {n, plural, one {is} other {are}} not counted.', { enclosure, n: lacking }
  )];
  if (parts.length === 0) return unknown;
  const usual = MODULES.map((modules) => modules * MODULE).filter((length) => length !== own);
  const counted = proposeRails(mounted, enclosure, reserve, [...typeof own === 'number' ? [own] : [], ...usual]);
  const said = counted.flatMap(({ length, count }) => count === null ? [] : [length === own
    ? words.say('{count, plural, one {# rail} other {# rails}} of {length}', { count, length: widthText(schedule, length) })
    : words.say('{count, plural, one {# rail} other {# rails}} of {length} ({modules} modules)', { count, length: widthText(schedule, length), modules: length / MODULE })]);
  const short = counted.filter(({ count }) => count === null).map(({ length }) => widthText(schedule, length));
  return [
    ...unknown,
    ...said.length === 0 ? [] : [words.say('{enclosure}: with its reserve of {reserve}, everything is put whole on {rails}.', {
      enclosure, reserve: percent(reserve), rails: said.join(', '),
    })],
    ...short.length === 0 || reserve >= 1 ? [] : [words.say('{enclosure}: its widest part does not fit on a rail of {lengths}.', { enclosure, lengths: short.join(', ') })],
  ];
}

function heatSentences(schedule: LoadSchedule, id: number): string[] {
  const { words } = schedule;
  const enclosure = schedule.value('enclosures', id, 'enclosure');
  const number = (key: string) => {
    const value = schedule.value('enclosures', id, key);
    return typeof value === 'number' ? value : null;
  };
  const [loss, transfer, factor, ambient] = [number('loss'), number('transfer'), number('topFactor'), number('ambient')];
  const [most, area] = [number('maxInside'), number('area')];
  if (typeof enclosure !== 'string' || loss === null || transfer === null || factor === null || ambient === null) return [];
  const heat = `${schedule.partialSign('enclosures', id, 'loss')}${words.number(loss, 1)}\u00a0W`;
  if (most === null) {
    return [words.say('{enclosure}: which cooling surface its heat of {heat} needs is known once its highest inside temperature is entered.', { enclosure, heat })];
  }
  const values = { enclosure, heat, most: degrees(most), ambient: degrees(ambient) };
  const needed = neededArea(loss, transfer, factor, ambient, most);
  if (needed === null) {
    return [words.say('{enclosure}: with {ambient} around it, no closed enclosure keeps its top below {most}. Cool it, or put it elsewhere.', values)];
  }
  const surface = (value: number) => ({ value, decimals: 2, unit: 'm²' });
  const asked = { ...values, needed: roundedUp(surface(needed)) };
  return [area === null
    ? words.say('{enclosure}: its heat of {heat} needs a cooling surface of {needed}, so that its top stays below {most} with {ambient} around it.', asked)
    : words.say('{enclosure}: its heat of {heat} needs a cooling surface of {needed}, so that its top stays below {most} with {ambient} around it; it has {area}.', { ...asked, area: surface(area) })];
}
