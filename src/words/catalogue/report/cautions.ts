import type { Area } from '../translation.ts';

/** What must be said wherever figures stand. */
export const cautions = {
  'These figures support design by a competent person and never replace it.': {
    de: 'Diese Werte unterstützen die Planung durch eine Elektrofachkraft und ersetzen sie nie.',
    fr: 'Ces valeurs aident à la conception par une personne qualifiée et ne la remplacent jamais.',
  },
  'Local wiring rules, the makers’ instructions and licensed practice decide.': {
    de: 'Maßgebend sind die örtlichen Errichtungsbestimmungen, die Anleitungen der Hersteller und die Praxis zugelassener Fachbetriebe.',
    fr: 'Les règles locales d’installation, les notices des fabricants et la pratique des professionnels habilités font foi.',
  },
  'Mains work is for licensed electricians, with the circuit isolated and proved dead.': {
    de: 'Arbeiten an Netzstromkreisen sind zugelassenen Elektrofachkräften vorbehalten; der Stromkreis ist freigeschaltet, die Spannungsfreiheit festgestellt.',
    fr: 'Les travaux sur les circuits du secteur sont réservés aux électriciens habilités, circuit consigné et absence de tension vérifiée.',
  },
  'Measure before energising.': { de: 'Vor dem Einschalten messen.', fr: 'Mesurer avant de mettre sous tension.' },
  Caution: { de: 'Sicherheitshinweis', fr: 'Précaution' },
} satisfies Area;
