import type { CSSOptions } from 'vite';

/** Classes of parts of the grid library that the element does without. The badge of its licence is not among them. */
const unusedClass = new RegExp(`\\.(?:${[
  'ht(?:ContextMenu|DropdownMenu|Filters|UI|Comment|Checkbox|Autocomplete)\\w*', 'htSelectEditor', 'listbox', 'changeType',
  'ht-(?:multi-select|pagination|dialog|notification|empty-data-state|loading)[\\w-]*',
  'ht__manual(?:Column|Row)Move[\\w-]*', 'manualRowResizer\\w*', 'columnSorting', '(?:before|after)Hidden(?:Column|Row)',
  'collapsibleIndicator', 'ht_nestingLevels?',
].join('|')})(?![\\w-])`);

/**
 * Leaves the styles of menus, dialogs, filters and the like out of the grid library's sheet: 9 KB gzipped. Whoever
 * comes to use such a part takes its classes out of the list above.
 */
export const leaveOutStyles: CSSOptions = {
  postcss: {
    plugins: [{
      postcssPlugin: 'leave-out-styles',
      Rule(rule) {
        if (!rule.source?.input.file?.includes('/handsontable/styles/')) return;
        const kept = rule.selectors.filter((selector) => !unusedClass.test(selector));
        if (kept.length === 0) rule.remove();
        else if (kept.length < rule.selectors.length) rule.selectors = kept;
      },
    }],
  },
};
