import type { Area } from './translation.ts';

export const findings = {
  over: { de: 'überschritten', fr: 'dépassé' },
  'near the limit': { de: 'knapp', fr: 'proche de la limite' },
  incomplete: { de: 'unvollständig', fr: 'incomplet' },
  'within limits': { de: 'in Ordnung', fr: 'conforme' },
  note: { de: 'Hinweis', fr: 'remarque' },
} satisfies Area;
