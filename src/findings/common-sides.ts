import { grouped, type SheetName } from '../schedule/index.ts';
import type { Gathering } from './facts.ts';

/** Feeds and rails, by tag, behind the outputs of a module with one common side, where there are several of them. */
export const SHARED_COMMON: Gathering<readonly string[]> = {
  sheet: 'modules',
  reads: (['module', 'feed', 'rail'] as const).map((key): readonly [SheetName, string] => ['outputs', key]),
  gather: (document, book) => {
    const modules = book.targets('outputs', 'module');
    const text = (id: number, key: string) => book.value('outputs', id, key);
    const fed = document.rows('outputs').flatMap(({ id }) => {
      // An output on a rail takes nothing from a feed, which may have the same tag.
      const key = text(id, 'rail') === null ? 'feed' : 'rail';
      const tag = text(id, key);
      return modules[id]! < 0 || typeof tag !== 'string' ? [] : [{ module: modules[id]!, source: `${key} ${tag}`, tag }];
    });
    return new Map([...grouped(fed, ({ module }) => module)]
      .map(([module, those]) => [module, [...new Map(those.map(({ source, tag }) => [source, tag])).values()]] as const)
      .filter(([, sources]) => sources.length > 1));
  },
};
