import type { Area } from '../translation.ts';

/** Where rules, defaults and ranges come from. */
export const sources = {
  '5 % as BS 7671, appendix 12, for uses other than lighting': {
    de: '5 % wie BS 7671, Anhang 12, für andere Anwendungen als Beleuchtung',
    fr: '5 % selon BS 7671, annexe 12, pour les usages autres que l’éclairage',
  },
  '5.5 W/(m²K) for painted sheet steel, rule of thumb in several tables': {
    de: '5,5 W/(m²K) für lackiertes Stahlblech, Faustwert mehrerer Tabellen',
    fr: '5,5 W/(m²K) pour tôle d’acier peinte, valeur usuelle de plusieurs tableaux',
  },
  '80 % as in NEC 210.20(A) for continuous loads': {
    de: '80 % wie in NEC 210.20(A) für Dauerlasten',
    fr: '80 % comme dans NEC 210.20(A) pour les charges continues',
  },
  '80 % as in NEC 210.20(A) for continuous loads; common practice for supplies': {
    de: '80 % wie in NEC 210.20(A) für Dauerlasten; übliche Praxis bei Versorgungen',
    fr: '80 % comme dans NEC 210.20(A) pour les charges continues ; pratique courante pour les alimentations',
  },
  'I = P ÷ (U × cos φ), single phase': { de: 'I = P ÷ (U × cos φ), einphasig', fr: 'I = P ÷ (U × cos φ), monophasé' },
  'IEC 60127-2, quick-acting, as reprinted in an article on fuse operating times; within 0.02 s': {
    de: 'IEC 60127-2, flink, nach einem Aufsatz über Schmelzzeiten von Sicherungen; innerhalb von 0,02 s',
    fr: 'IEC 60127-2, rapide, d’après un article sur les temps de fusion des fusibles ; en moins de 0,02 s',
  },
  'IEC 60127-2, quick-acting, as reprinted in an article on fuse operating times; within 0.3 s': {
    de: 'IEC 60127-2, flink, nach einem Aufsatz über Schmelzzeiten von Sicherungen; innerhalb von 0,3 s',
    fr: 'IEC 60127-2, rapide, d’après un article sur les temps de fusion des fusibles ; en moins de 0,3 s',
  },
  'IEC 60228 gives resistances at 20 °C': {
    de: 'IEC 60228 gibt Widerstände bei 20 °C an',
    fr: 'IEC 60228 donne les résistances à 20 °C',
  },
  'IEC 60898-1, upper end of the band of instantaneous tripping; the time from memory; within 0.1 s': {
    de: 'IEC 60898-1, oberes Ende des Bereichs der unverzögerten Auslösung; die Zeit aus dem Gedächtnis; innerhalb von 0,1 s',
    fr: 'IEC 60898-1, limite haute de la plage de déclenchement instantané ; temps cité de mémoire ; en moins de 0,1 s',
  },
  'Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1; else as the drop': {
    de: 'Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1; sonst wie der Spannungsfall',
    fr: 'Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1 ; sinon comme la chute de tension',
  },
  'Ohm’s law along the cable (moment method); resistances at 20 °C as IEC 60228, 0.393 % more for each kelvin': {
    de: 'Ohmsches Gesetz entlang der Leitung (Momentenverfahren); Widerstände bei 20 °C nach IEC 60228, 0,393 % mehr je Kelvin',
    fr: 'Loi d’Ohm le long du câble (méthode des moments) ; résistances à 20 °C selon IEC 60228, 0,393 % de plus par kelvin',
  },
  'Ohm’s law along the cable (moment method); resistances at 20 °C as IEC 60228, 0.393 % more for each kelvin; Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1': {
    de: 'Ohmsches Gesetz entlang der Leitung (Momentenverfahren); Widerstände bei 20 °C nach IEC 60228, 0,393 % mehr je Kelvin; Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1',
    fr: 'Loi d’Ohm le long du câble (méthode des moments) ; résistances à 20 °C selon IEC 60228, 0,393 % de plus par kelvin ; Ib ≤ In ≤ Iz, IEC 60364-4-43, 433.1',
  },
  'Ohm’s law along the cable': { de: 'Ohmsches Gesetz entlang der Leitung', fr: 'Loi d’Ohm le long du câble' },
  'Ohm’s law; a supply that limits its output gives no more than its peak: common practice, no source': {
    de: 'Ohmsches Gesetz; eine Versorgung, die ihren Strom begrenzt, liefert nicht mehr als ihren Spitzenstrom: übliche Praxis, ohne Quelle',
    fr: 'Loi d’Ohm ; une alimentation qui limite son courant ne fournit pas plus que son courant de crête : pratique courante, sans source',
  },
  'P = U × I; the type’s draw where it has one': {
    de: 'P = U × I; die Stromaufnahme des Typs, wo er eine hat',
    fr: 'P = U × I ; le courant absorbé du type s’il en a un',
  },
  'SELV limit of 120 V ripple-free DC, IEC 61558-1:2005, 3.7.16': {
    de: 'SELV-Grenze von 120 V oberschwingungsfreier Gleichspannung, IEC 61558-1:2005, 3.7.16',
    fr: 'Limite TBTS de 120 V en courant continu lisse, IEC 61558-1:2005, 3.7.16',
  },
  'a contact is rated by utilization category, IEC 60947-4-1 and IEC 60947-5-1': {
    de: 'ein Kontakt wird nach Gebrauchskategorie bemessen, IEC 60947-4-1 und IEC 60947-5-1',
    fr: 'un contact est assigné par catégorie d’emploi, IEC 60947-4-1 et IEC 60947-5-1',
  },
  'arithmetic of the load schedule': { de: 'Arithmetik der Lastaufstellung', fr: 'arithmétique du bilan de charge' },
  'categories AC-5a and AC-5b, IEC 60947-4-1': {
    de: 'Kategorien AC-5a und AC-5b, IEC 60947-4-1',
    fr: 'catégories AC-5a et AC-5b, IEC 60947-4-1',
  },
  'category AC-1, IEC 60947-4-1': { de: 'Kategorie AC-1, IEC 60947-4-1', fr: 'catégorie AC-1, IEC 60947-4-1' },
  'category AC-15, IEC 60947-5-1': { de: 'Kategorie AC-15, IEC 60947-5-1', fr: 'catégorie AC-15, IEC 60947-5-1' },
  'category AC-3, IEC 60947-4-1': { de: 'Kategorie AC-3, IEC 60947-4-1', fr: 'catégorie AC-3, IEC 60947-4-1' },
  'coincidence of loads as a share of 1; common practice, no source': {
    de: 'Gleichzeitigkeit von Lasten als Anteil von 1; übliche Praxis, ohne Quelle',
    fr: 'simultanéité des charges comme fraction de 1 ; pratique courante, sans source',
  },
  'common practice, no source': { de: 'übliche Praxis, ohne Quelle', fr: 'pratique courante, sans source' },
  'definition of the relative volt drop': {
    de: 'Definition des relativen Spannungsfalls',
    fr: 'définition de la chute de tension relative',
  },
  'demand factor as in textbooks of power supply (maximum demand ÷ connected load)': {
    de: 'Bedarfsfaktor wie in Lehrbüchern der Energieversorgung (Höchstbedarf ÷ Anschlusswert)',
    fr: 'facteur de demande comme dans les manuels d’alimentation électrique (demande maximale ÷ charge raccordée)',
  },
  'linear rule of thumb for closed enclosures; IEC TR 60890 gives a rise that grows a little slower': {
    de: 'lineare Faustregel für geschlossene Gehäuse; IEC TR 60890 gibt eine etwas langsamer wachsende Erwärmung an',
    fr: 'règle linéaire approchée pour enveloppes fermées ; IEC TR 60890 donne un échauffement qui croît un peu moins vite',
  },
  'loss = output × (1 ÷ efficiency − 1), from the definition of efficiency': {
    de: 'Verlustleistung = Ausgangsleistung × (1 ÷ Wirkungsgrad − 1), nach der Definition des Wirkungsgrads',
    fr: 'pertes = puissance de sortie × (1 ÷ rendement − 1), d’après la définition du rendement',
  },
  'parallel units with one in reserve (N + 1), derated as data sheets say; common practice, no source': {
    de: 'parallele Einheiten mit einer in Reserve (N + 1), gemindert wie in Datenblättern; übliche Praxis, ohne Quelle',
    fr: 'unités en parallèle dont une en réserve (N + 1), déclassées selon les fiches techniques ; pratique courante, sans source',
  },
  'rated diversity factor, IEC 61439-1': {
    de: 'Bemessungsbelastungsfaktor, IEC 61439-1',
    fr: 'facteur de diversité assigné, IEC 61439-1',
  },
  'rounded up from the 5.6 to 6.6 × of gG fuses in BS 7671:2018+A2:2022, Table 41.2, as reprinted; within 0.4 s': {
    de: 'aufgerundet vom 5,6- bis 6,6-Fachen bei gG-Sicherungen in BS 7671:2018+A2:2022, Tabelle 41.2, nach einem Nachdruck; innerhalb von 0,4 s',
    fr: 'arrondi par excès du multiple 5,6 à 6,6 des fusibles gG dans BS 7671:2018+A2:2022, tableau 41.2, d’après une reproduction ; en moins de 0,4 s',
  },
  'surface factors of IEC TR 60890, Table 3': {
    de: 'Flächenfaktoren nach IEC TR 60890, Tabelle 3',
    fr: 'facteurs de surface d’IEC TR 60890, tableau 3',
  },
  'the form in which data sheets give it; common practice, no source': {
    de: 'Form, in der Datenblätter es angeben; übliche Praxis, ohne Quelle',
    fr: 'forme donnée par les fiches techniques ; pratique courante, sans source',
  },
  'the makers’ data, as entered for the types': {
    de: 'Herstellerangaben, wie bei den Typen eingetragen',
    fr: 'données des fabricants, telles que saisies pour les types',
  },
  'upper end of characteristic B, IEC 60898-1': {
    de: 'oberes Ende der Charakteristik B, IEC 60898-1',
    fr: 'limite haute de la caractéristique B, IEC 60898-1',
  },
  'utilization categories of IEC 60947': {
    de: 'Gebrauchskategorien nach IEC 60947',
    fr: 'catégories d’emploi d’IEC 60947',
  },
} satisfies Area;
