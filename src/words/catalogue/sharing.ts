import type { Area } from './translation.ts';

export const sharing = {
  'Back to the sheets (Esc)': { de: 'Zurück zu den Blättern (Esc)', fr: 'Retour aux feuilles (Échap)' },
  Close: { de: 'Schließen', fr: 'Fermer' },
} satisfies Area;
