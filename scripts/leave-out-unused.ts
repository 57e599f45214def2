import type { Plugin } from 'vite';

/** The grid's styles as a text that it would put into the page's head, where they cannot reach a shadow root. */
const gridStyles = '/handsontable/styles/handsontableStyles.mjs';
/** The formula engine's help texts on its functions, which only its catalogue of functions reads. */
const functionTexts = /\/hyperformula\/es\/interpreter\/functionMetadata\/categories\/[\w-]+\.mjs$/;
/** How many files of these texts there are; all share one way of being exported. */
const functionTextFiles = 13;

/**
 * Replaces two parts of the libraries that the element never uses by empty ones in the build: about 40 KB gzipped.
 * Fails the build where a new version of a library keeps them elsewhere, so that nothing grows unseen.
 *
 * @returns a plugin of Vite, for builds only
 */
export function leaveOutUnused(): Plugin {
  const found = { gridStyles: 0, functionTexts: 0 };
  return {
    name: 'leave-out-unused',
    apply: 'build',
    buildStart() {
      found.gridStyles = 0;
      found.functionTexts = 0;
    },
    transform: {
      order: 'pre',
      filter: { id: [`**${gridStyles}`, functionTexts] },
      handler(code, id) {
        if (id.endsWith(gridStyles)) {
          found.gridStyles += 1;
          return { code: 'export default \'\';', map: null };
        }
        const names = [...code.matchAll(/^export const (\w+_DOCS) = \{$/gm)].map(([, name]) => name);
        if (names.length !== 1) this.error(`${id} exports its texts in a way that is not known here.`);
        found.functionTexts += 1;
        return { code: `export const ${names.join()} = {};`, map: null };
      },
    },
    buildEnd(error) {
      if (error) return;
      if (found.gridStyles !== 1 || found.functionTexts !== functionTextFiles) {
        this.error(`Found ${found.gridStyles} of 1 file of the grid's styles, ${found.functionTexts} of `
          + `${functionTextFiles} files of the engine's function texts: their places in the packages have changed.`);
      }
    },
  };
}
