import type { Area } from '../translation.ts';

/** Rules in words. */
export const rules = {
  'sum of connected over the device rows that name it': {
    de: 'Summe der Anschlussströme der Gerätezeilen, die sie nennen',
    fr: 'somme des courants raccordés des lignes d’appareils qui le nomment',
  },
  'sum of demand over the device rows that name it': {
    de: 'Summe des Strombedarfs der Gerätezeilen, die sie nennen',
    fr: 'somme des courants demandés des lignes d’appareils qui le nomment',
  },
  'sum of points over the device rows that name it': {
    de: 'Summe der Busplätze der Gerätezeilen, die sie nennen',
    fr: 'somme des points des lignes d’appareils qui la nomment',
  },
  'sum of current over the relay outputs that name it': {
    de: 'Summe der Ströme der Relaisausgänge, die ihn nennen',
    fr: 'somme des courants des sorties à relais qui le nomment',
  },
  'sum of loss over the supplies that name it': {
    de: 'Summe der Verlustleistungen der Versorgungen, die es nennen',
    fr: 'somme des pertes des alimentations qui la nomment',
  },
  'number of runs that name it': {
    de: 'Anzahl der Leitungen, die sie nennen',
    fr: 'nombre de liaisons qui la nomment',
  },
  'sum of the currents of its devices, each at its own voltage where it draws constant power': {
    de: 'Summe der Ströme ihrer Geräte, bei konstanter Leistung jeweils an der eigenen Spannung',
    fr: 'somme des courants de ses appareils, chacun à sa propre tension s’il absorbe une puissance constante',
  },
  '2 × {conductor.resistance} ÷ 1000 × (1 + 0.00393 × ({temperature} − 20 °C)) ÷ {pairs} × sum of current × distance of its devices, where that is largest': {
    de: '2 × {conductor.resistance} ÷ 1000 × (1 + 0,00393 × ({temperature} − 20 °C)) ÷ {pairs} × Summe aus Strom × Entfernung ihrer Geräte, wo diese am größten ist',
    fr: '2 × {conductor.resistance} ÷ 1000 × (1 + 0,00393 × ({temperature} − 20 °C)) ÷ {pairs} × somme de courant × distance de ses appareils, là où elle est la plus grande',
  },
  'the less of {rail.voltage} ÷ (2 × {conductor.resistance} ÷ 1000 × (1 + 0.00393 × ({temperature} − 20 °C)) ÷ {pairs} × {length}) and {rail.rated} × {rail.units} × {rail.peak}': {
    de: 'der kleinere Wert von {rail.voltage} ÷ (2 × {conductor.resistance} ÷ 1000 × (1 + 0,00393 × ({temperature} − 20 °C)) ÷ {pairs} × {length}) und {rail.rated} × {rail.units} × {rail.peak}',
    fr: 'la plus petite valeur entre {rail.voltage} ÷ (2 × {conductor.resistance} ÷ 1000 × (1 + 0,00393 × ({temperature} − 20 °C)) ÷ {pairs} × {length}) et {rail.rated} × {rail.units} × {rail.peak}',
  },
  'highest of the least voltages of its devices’ types': {
    de: 'höchste der Mindestspannungen der Typen ihrer Geräte',
    fr: 'la plus élevée des tensions minimales des types de ses appareils',
  },
  '{length} scaled with all distances until one is just met: a drop of {maxDrop} of {rail.voltage}, {minVoltage} at the devices, {trip} × {protection} into a short circuit at the end; none where the conductor does not carry current and protection': {
    de: '{length}, mit allen Entfernungen gestreckt, bis eine Grenze gerade eingehalten ist: Spannungsfall ≤ {maxDrop} × {rail.voltage}, Spannung an den Geräten ≥ {minVoltage}, Kurzschlussstrom am Ende ≥ {trip} × {protection}; keine, wo der Leiter für Strom und Schutzeinrichtung nicht ausreicht',
    fr: '{length}, étirée avec toutes les distances jusqu’à ce qu’une limite soit juste tenue : chute de tension ≤ {maxDrop} × {rail.voltage}, tension aux appareils ≥ {minVoltage}, courant de court-circuit en bout ≥ {trip} × {protection} ; aucune si le conducteur ne convient pas au courant et à la protection',
  },
  'highest resistance on the sheet Conductors that keeps to: a drop of {maxDrop} of {rail.voltage}, {minVoltage} at the devices, {trip} × {protection} into a short circuit at the end; and that carries current and protection': {
    de: 'höchster Widerstand auf dem Blatt Leiter, mit dem eingehalten sind: Spannungsfall ≤ {maxDrop} × {rail.voltage}, Spannung an den Geräten ≥ {minVoltage}, Kurzschlussstrom am Ende ≥ {trip} × {protection}; und der für Strom und Schutzeinrichtung ausreicht',
    fr: 'plus forte résistance de la feuille Conducteurs avec laquelle sont tenus : chute de tension ≤ {maxDrop} × {rail.voltage}, tension aux appareils ≥ {minVoltage}, courant de court-circuit en bout ≥ {trip} × {protection} ; et qui convient au courant et à la protection',
  },
  'surface of {height} × {width} × {depth}, each side weighed by its mounting ({mounting})': {
    de: 'Oberfläche aus {height} × {width} × {depth}, jede Seite nach der Aufstellung gewichtet ({mounting})',
    fr: 'surface de {height} × {width} × {depth}, chaque côté pondéré selon le montage ({mounting})',
  },
  '{limit} × (1 − {reserve}), rounded down, − {points}': {
    de: '{limit} × (1 − {reserve}), abgerundet, − {points}',
    fr: '{limit} × (1 − {reserve}), arrondi par défaut, − {points}',
  },
  '{rail.voltage} − drop on the run up to {distance} (where that is not known, to its end at {run.length})': {
    de: '{rail.voltage} − Spannungsfall auf der Leitung bis {distance} (wo sie nicht bekannt ist, bis zum Ende bei {run.length})',
    fr: '{rail.voltage} − chute de tension sur la liaison jusqu’à {distance} (si elle n’est pas connue, jusqu’à l’extrémité à {run.length})',
  },
  '1, as neither the row nor its type says otherwise': {
    de: '1, da weder die Zeile noch ihr Typ etwas anderes sagt',
    fr: '1, car ni la ligne ni son type ne disent autre chose',
  },
  'the contact’s rating for the kind of load': {
    de: 'Bemessungswert des Kontakts für die Lastart',
    fr: 'valeur assignée du contact pour la nature de la charge',
  },
  '{rated} × ({units} − 1 as redundant) × {derating}': {
    de: '{rated} × ({units} − 1, da redundant) × {derating}',
    fr: '{rated} × ({units} − 1, car redondante) × {derating}',
  },
  '{rated} × {units} × {derating} × (1 − {lessPerKelvin} for each kelvin of {enclosure.inside} above {fullUpTo})': {
    de: '{rated} × {units} × {derating} × (1 − {lessPerKelvin} je Kelvin, um das {enclosure.inside} über {fullUpTo} liegt)',
    fr: '{rated} × {units} × {derating} × (1 − {lessPerKelvin} par kelvin de {enclosure.inside} au-dessus de {fullUpTo})',
  },
  '{rated} × ({units} − 1 as redundant) × {derating} × (1 − {lessPerKelvin} for each kelvin of {enclosure.inside} above {fullUpTo})': {
    de: '{rated} × ({units} − 1, da redundant) × {derating} × (1 − {lessPerKelvin} je Kelvin, um das {enclosure.inside} über {fullUpTo} liegt)',
    fr: '{rated} × ({units} − 1, car redondante) × {derating} × (1 − {lessPerKelvin} par kelvin de {enclosure.inside} au-dessus de {fullUpTo})',
  },
} satisfies Area;
