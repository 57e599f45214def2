import type { Area } from '../translation.ts';

/** What pictures say. */
export const pictures = {
  'Save picture': { de: 'Bild speichern', fr: 'Enregistrer le graphique' },
  'Loading of the supplies': { de: 'Auslastung der Versorgungen', fr: 'Taux de charge des alimentations' },
  'There are no supplies yet.': { de: 'Es gibt noch keine Versorgungen.', fr: 'Il n’y a pas encore d’alimentation.' },
  '{amount} of {most}, target {target}': {
    de: '{amount} von {most}, Zielwert {target}',
    fr: '{amount} sur {most}, cible {target}',
  },
  '{name}: {figures}; {status}.': {
    de: '{name}: {figures}; {status}.',
    fr: '{name}\u00a0: {figures}\u202f; {status}.',
  },
  'The tick marks the target; what is beyond 100 % is hatched. On paper at full size 7 mm are 10 %.': {
    de: 'Der Strich markiert den Zielwert; was über 100 % liegt, ist schraffiert. Auf Papier in Originalgröße entsprechen 7 mm 10 %.',
    fr: 'Le trait marque la cible\u202f; au-delà de 100\u202f% la barre est hachurée. Sur papier à l’échelle 1, 7\u00a0mm correspondent à 10\u202f%.',
  },
  'The tick marks where the reserve begins; what is beyond 100 % is hatched. On paper at full size 7 mm are 10 %.': {
    de: 'Der Strich markiert den Beginn der Reserve; was über 100 % liegt, ist schraffiert. Auf Papier in Originalgröße entsprechen 7 mm 10 %.',
    fr: 'Le trait marque le début de la réserve\u202f; au-delà de 100\u202f% la barre est hachurée. Sur papier à l’échelle 1, 7\u00a0mm correspondent à 10\u202f%.',
  },
  'Points on the bus branches': { de: 'Busplätze der Buslinien', fr: 'Points des lignes de bus' },
  'There are no bus branches yet.': { de: 'Es gibt noch keine Buslinien.', fr: 'Il n’y a pas encore de ligne de bus.' },
  'Voltage along run {run}': { de: 'Spannung entlang der Leitung {run}', fr: 'Tension le long de la liaison {run}' },
  'Run {run}': { de: 'Leitung {run}', fr: 'Liaison {run}' },
  '{length} of {knowsConductor, select, yes {{conductor}} other {unknown conductor}} on {knowsRail, select, yes {rail {rail}} other {unknown rail}}': {
    de: '{length}, {knowsConductor, select, yes {Leiter {conductor}} other {Leiter nicht bekannt}}, {knowsRail, select, yes {Schiene {rail}} other {Schiene nicht bekannt}}',
    fr: '{length}, {knowsConductor, select, yes {conducteur {conductor}} other {conducteur inconnu}}, {knowsRail, select, yes {rail {rail}} other {rail inconnu}}',
  },
  'lowest {voltage}, needed {least}': {
    de: 'niedrigste Spannung {voltage}, erforderlich {least}',
    fr: 'minimum {voltage}, requis {least}',
  },
  'no working voltage, needed {least}': {
    de: 'keine Betriebsspannung, erforderlich {least}',
    fr: 'aucune tension de service, requis {least}',
  },
  'The run is {status}.': { de: 'Status der Leitung: {status}.', fr: 'État de la liaison\u00a0: {status}.' },
  'It has no working voltage.': { de: 'Sie hat keine Betriebsspannung.', fr: 'Elle n’a pas de tension de service.' },
  'The lowest voltage is {voltage}, a drop of {drop} where {most} is allowed.': {
    de: 'Die niedrigste Spannung ist {voltage}, ein Spannungsfall von {drop}, zulässig {most}.',
    fr: 'La tension la plus basse est {voltage}, une chute de {drop}, admissible {most}.',
  },
  'Its devices need {least}.': { de: 'Ihre Geräte brauchen {least}.', fr: 'Ses appareils demandent {least}.' },
  'No devices are on it.': { de: 'Keine Geräte sind an ihr angeschlossen.', fr: 'Aucun appareil n’y est raccordé.' },
  'No working voltage: the devices draw constant power, and the cable cannot deliver what they ask for at any voltage.': {
    de: 'Keine Betriebsspannung: Die Geräte nehmen eine konstante Leistung auf, die die Leitung bei keiner Spannung übertragen kann.',
    fr: 'Aucune tension de service\u00a0: les appareils absorbent une puissance constante que le câble ne peut fournir à aucune tension.',
  },
  'The voltage along this run is not known yet. Its findings say which entries are missing.': {
    de: 'Die Spannung entlang dieser Leitung ist noch nicht bekannt. Ihre Befunde sagen, welche Angaben fehlen.',
    fr: 'La tension le long de cette liaison n’est pas encore connue. Ses constats disent quelles données manquent.',
  },
  'most drop {share}: {voltage}': {
    de: 'zulässiger Spannungsfall {share}: {voltage}',
    fr: 'chute admissible {share}\u00a0: {voltage}',
  },
  '{devices}: {voltage} at {distance}': {
    de: '{devices}: {voltage} bei {distance}',
    fr: '{devices}\u00a0: {voltage} à {distance}',
  },
  '{devices}: {voltage} at {distance}, needed {least}': {
    de: '{devices}: {voltage} bei {distance}, erforderlich {least}',
    fr: '{devices}\u00a0: {voltage} à {distance}, requis {least}',
  },
  '{devices}: {voltage} at {distance}, needed {least}, too little': {
    de: '{devices}: {voltage} bei {distance}, erforderlich {least}, zu wenig',
    fr: '{devices}\u00a0: {voltage} à {distance}, requis {least}, insuffisant',
  },
  'constant current': { de: 'konstanter Strom', fr: 'courant constant' },
  'constant power': { de: 'konstante Leistung', fr: 'puissance constante' },
  'least voltage of the devices': { de: 'Mindestspannung der Geräte', fr: 'tension minimale requise' },
  'what they lack': { de: 'fehlende Spannung', fr: 'tension manquante' },
  'On paper at full size 10 mm are {across} across and {up} up.': {
    de: 'Auf Papier in Originalgröße entsprechen 10 mm waagerecht {across} und senkrecht {up}.',
    fr: 'Sur papier à l’échelle 1, 10\u00a0mm font {across} en abscisse et {up} en ordonnée.',
  },
  '{count, plural, one {# more place is drawn without its name.} other {# more places are drawn without their names.}}': {
    de: '{count, plural, one {# weitere Stelle ist ohne Namen gezeichnet.} other {# weitere Stellen sind ohne Namen gezeichnet.}}',
    fr: '{count, plural, one {# autre emplacement est tracé sans son nom.} other {# autres emplacements sont tracés sans leurs noms.}}',
  },
} satisfies Area;
