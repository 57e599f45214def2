import type { Area } from '../translation.ts';

/** What branches, runs, conductors, outputs, contacts and feeds, and their columns, mean. */
export const lineHelps = {
  'One row for each bus branch: how many devices it may carry and how many it does.': {
    de: 'Eine Zeile je Buslinie: wie viele Geräte zulässig und wie viele angeschlossen sind.',
    fr: 'Une ligne du tableau par ligne de bus : combien d’appareils sont admis et combien sont raccordés.',
  },
  'Tag of the branch, as device rows give it.': {
    de: 'Kennzeichen der Buslinie, wie es Gerätezeilen nennen.',
    fr: 'Repère de la ligne de bus, tel que le donnent les lignes d’appareils.',
  },
  'Most points that the branch may carry.': {
    de: 'Höchstzahl der Plätze auf der Buslinie.',
    fr: 'Nombre maximal de points sur la ligne de bus.',
  },
  'Share of the limit kept free for later.': {
    de: 'Anteil der Grenze, der für später frei bleibt.',
    fr: 'Part de la limite gardée libre pour plus tard.',
  },
  'Both ends of the line carry their terminating resistors.': {
    de: 'An beiden Enden der Linie sitzen die Abschlusswiderstände.',
    fr: 'Les deux extrémités de la ligne portent leurs résistances de terminaison.',
  },
  'Places taken by its devices.': { de: 'Von ihren Geräten belegte Plätze.', fr: 'Points occupés par ses appareils.' },
  'Places left below the limit less the reserve.': {
    de: 'Freie Plätze unter der Grenze abzüglich Reserve.',
    fr: 'Points restants sous la limite diminuée de la réserve.',
  },
  'Points as a share of the limit.': {
    de: 'Belegte Plätze im Verhältnis zur Grenze.',
    fr: 'Points occupés rapportés à la limite.',
  },
  'Runs that belong to the branch.': {
    de: 'Leitungen, die zur Buslinie gehören.',
    fr: 'Liaisons qui appartiennent à la ligne de bus.',
  },
  'The worst that the limits of this branch say.': {
    de: 'Das Ungünstigste, was die Grenzen dieser Buslinie ergeben.',
    fr: 'Le plus défavorable de ce que donnent les limites de cette ligne de bus.',
  },
  'One row for each outgoing field cable: which rail feeds it, its conductor, its length.': {
    de: 'Eine Zeile je abgehender Feldleitung: welche Schiene sie speist, ihr Leiter, ihre Länge.',
    fr: 'Une ligne par câble de terrain : quel rail l’alimente, son conducteur, sa longueur.',
  },
  'Tag of the cable, as device rows give it.': {
    de: 'Kennzeichen der Leitung, wie es Gerätezeilen nennen.',
    fr: 'Repère du câble, tel que le donnent les lignes d’appareils.',
  },
  'Supply rail that feeds it.': {
    de: 'Versorgungsschiene, die sie speist.',
    fr: 'Rail d’alimentation qui l’alimente.',
  },
  'Bus branch that it belongs to.': {
    de: 'Buslinie, zu der sie gehört.',
    fr: 'Ligne de bus à laquelle elle appartient.',
  },
  'Conductor of the pair.': { de: 'Leiter des Adernpaars.', fr: 'Conducteur de la paire.' },
  'Pairs in parallel.': { de: 'Adernpaare parallel.', fr: 'Paires en parallèle.' },
  'Length of the cable, one way.': { de: 'Einfache Länge der Leitung.', fr: 'Longueur du câble, aller simple.' },
  'Temperature of the conductor.': { de: 'Temperatur des Leiters.', fr: 'Température du conducteur.' },
  'Whether the run is reckoned with all devices at once or with their diversity.': {
    de: 'Ob die Leitung mit allen Geräten zugleich oder mit ihrem Gleichzeitigkeitsfaktor berechnet wird.',
    fr: 'Si la liaison est calculée avec tous les appareils à la fois ou avec leur facteur de simultanéité.',
  },
  'Rating of the fuse or breaker of the run.': {
    de: 'Bemessungsstrom der Sicherung oder des Schutzschalters der Leitung.',
    fr: 'Courant assigné du fusible ou du disjoncteur de la liaison.',
  },
  'Multiple of the rating that makes the protection act at once; a characteristic such as B, C, D or gG may be typed.': {
    de: 'Vielfaches des Bemessungsstroms, bei dem die Schutzeinrichtung sofort auslöst; auch eine Charakteristik wie B, C, D oder gG kann eingegeben werden.',
    fr: 'Multiple du courant assigné qui fait agir aussitôt la protection ; on peut saisir une caractéristique telle que B, C, D ou gG.',
  },
  'Share of the voltage that may be lost on the run.': {
    de: 'Anteil der Spannung, der auf der Leitung abfallen darf.',
    fr: 'Part de la tension qui peut être perdue sur la liaison.',
  },
  'Current measured at its start, with its devices on.': {
    de: 'Strom, gemessen an ihrem Anfang bei eingeschalteten Geräten.',
    fr: 'Courant mesuré à son départ, ses appareils étant en marche.',
  },
  'Voltage measured at its far end, with its devices on.': {
    de: 'Spannung, gemessen an ihrem Ende bei eingeschalteten Geräten.',
    fr: 'Tension mesurée à son extrémité, ses appareils étant en marche.',
  },
  'Current at the start of the run.': { de: 'Strom am Anfang der Leitung.', fr: 'Courant au départ de la liaison.' },
  'Largest volt drop on the run.': {
    de: 'Größter Spannungsfall auf der Leitung.',
    fr: 'Plus grande chute de tension sur la liaison.',
  },
  'Drop as a share of the voltage of the rail.': {
    de: 'Spannungsfall im Verhältnis zur Spannung der Schiene.',
    fr: 'Chute de tension rapportée à la tension du rail.',
  },
  'Lowest voltage on the run.': {
    de: 'Niedrigste Spannung auf der Leitung.',
    fr: 'Tension la plus basse sur la liaison.',
  },
  'Highest voltage that a device on it needs.': {
    de: 'Höchste Spannung, die ein Gerät darauf braucht.',
    fr: 'Tension la plus élevée requise par un appareil qu’elle alimente.',
  },
  'Current of a short circuit at the far end.': {
    de: 'Strom eines Kurzschlusses am Leitungsende.',
    fr: 'Courant d’un court-circuit à l’extrémité.',
  },
  'Longest that the run may be.': {
    de: 'Größte Länge, die die Leitung haben darf.',
    fr: 'Longueur maximale que peut avoir la liaison.',
  },
  'Conductor of highest resistance with which the run does not fail.': {
    de: 'Leiter mit dem höchsten Widerstand, mit dem die Leitung noch genügt.',
    fr: 'Conducteur de plus forte résistance avec lequel la liaison convient encore.',
  },
  'The worst that the limits of this run say.': {
    de: 'Das Ungünstigste, was die Grenzen dieser Leitung ergeben.',
    fr: 'Le plus défavorable de ce que donnent les limites de cette liaison.',
  },
  'One row for each conductor: its resistance and, where a source says so, the current that it carries.': {
    de: 'Eine Zeile je Leiter: sein Widerstand und, wo eine Quelle es sagt, seine Strombelastbarkeit.',
    fr: 'Une ligne par conducteur : sa résistance et, si une source le dit, le courant admissible.',
  },
  'Name, as runs give it.': { de: 'Name, wie ihn Leitungen nennen.', fr: 'Nom, tel que le donnent les liaisons.' },
  'Cross-section.': { de: 'Querschnitt.', fr: 'Section.' },
  'DC resistance of one conductor at 20 °C.': {
    de: 'Gleichstromwiderstand eines Leiters bei 20 °C.',
    fr: 'Résistance en courant continu d’un conducteur à 20 °C.',
  },
  'Current that it carries as installed.': {
    de: 'Zulässiger Strom bei der gegebenen Verlegung.',
    fr: 'Courant admissible dans les conditions de pose.',
  },
  'Where the figures come from.': { de: 'Woher die Werte stammen.', fr: 'D’où viennent les valeurs.' },
  'One row for each relay output: its contact, the load that it switches, the feed behind it.': {
    de: 'Eine Zeile je Relaisausgang: sein Kontakt, die geschaltete Last, der Netzabgang davor.',
    fr: 'Une ligne par sortie à relais : son contact, la charge commandée, le départ secteur en amont.',
  },
  'Tag of the output.': { de: 'Kennzeichen des Ausgangs.', fr: 'Repère de la sortie.' },
  'Relay module that it belongs to.': {
    de: 'Relaismodul, zu dem er gehört.',
    fr: 'Module à relais auquel elle appartient.',
  },
  'Kind of contact; gives the rating.': {
    de: 'Art des Kontakts; gibt den Bemessungswert vor.',
    fr: 'Sorte de contact ; donne la valeur assignée.',
  },
  'What is switched.': { de: 'Was geschaltet wird.', fr: 'Ce qui est commandé.' },
  'Kind of load; a contact is rated for each.': {
    de: 'Art der Last; ein Kontakt hat für jede einen Bemessungswert.',
    fr: 'Nature de la charge ; un contact a une valeur assignée pour chacune.',
  },
  'How many such loads the output switches.': {
    de: 'Wie viele solche Lasten der Ausgang schaltet.',
    fr: 'Nombre de telles charges que la sortie commande.',
  },
  'Power of one load.': { de: 'Leistung einer Last.', fr: 'Puissance d’une charge.' },
  'Voltage of the load.': { de: 'Spannung der Last.', fr: 'Tension de la charge.' },
  'Power factor of the load.': { de: 'Leistungsfaktor der Last.', fr: 'Facteur de puissance de la charge.' },
  'Peak current of one load at switching on.': {
    de: 'Spitzenstrom einer Last beim Einschalten.',
    fr: 'Courant de crête d’une charge à l’enclenchement.',
  },
  'Protected mains way behind the contact.': {
    de: 'Abgesicherter Netzabgang vor dem Kontakt.',
    fr: 'Départ secteur protégé en amont du contact.',
  },
  'Loading of the contact that the design aims to stay below.': {
    de: 'Auslastung des Kontakts, unter der die Planung bleiben soll.',
    fr: 'Taux de charge du contact sous lequel l’étude vise à rester.',
  },
  'Steady current through the contact.': {
    de: 'Dauerstrom durch den Kontakt.',
    fr: 'Courant permanent dans le contact.',
  },
  'Rating of the contact for this kind of load.': {
    de: 'Bemessungswert des Kontakts für diese Lastart.',
    fr: 'Valeur assignée du contact pour cette nature de charge.',
  },
  'Current as a share of the rating.': {
    de: 'Strom im Verhältnis zum Bemessungswert.',
    fr: 'Courant rapporté à la valeur assignée.',
  },
  'What is left before the rating.': {
    de: 'Was bis zum Bemessungswert bleibt.',
    fr: 'Ce qui reste avant la valeur assignée.',
  },
  'Peak current when all its loads switch on together.': {
    de: 'Spitzenstrom, wenn alle seine Lasten zugleich einschalten.',
    fr: 'Courant de crête si toutes ses charges s’enclenchent ensemble.',
  },
  'What is left before the making capacity of the contact.': {
    de: 'Was bis zum Einschaltvermögen des Kontakts bleibt.',
    fr: 'Ce qui reste avant le pouvoir de fermeture du contact.',
  },
  'The worst that the limits of this output say.': {
    de: 'Das Ungünstigste, was die Grenzen dieses Ausgangs ergeben.',
    fr: 'Le plus défavorable de ce que donnent les limites de cette sortie.',
  },
  'One row for each kind of relay contact: what it may switch of each kind of load.': {
    de: 'Eine Zeile je Art von Relaiskontakt: was er von jeder Lastart schalten darf.',
    fr: 'Une ligne par sorte de contact de relais : ce qu’il peut commander de chaque nature de charge.',
  },
  'Name, as outputs give it.': { de: 'Name, wie ihn Ausgänge nennen.', fr: 'Nom, tel que le donnent les sorties.' },
  'Rating for resistive loads.': {
    de: 'Bemessungswert für ohmsche Lasten.',
    fr: 'Valeur assignée pour charges résistives.',
  },
  'Rating for lamps and drivers.': {
    de: 'Bemessungswert für Lampen und Betriebsgeräte.',
    fr: 'Valeur assignée pour lampes et appareillages de lampes.',
  },
  'Rating for motors.': { de: 'Bemessungswert für Motoren.', fr: 'Valeur assignée pour moteurs.' },
  'Rating for coils of contactors and valves.': {
    de: 'Bemessungswert für Spulen von Schützen und Ventilen.',
    fr: 'Valeur assignée pour bobines de contacteurs et de vannes.',
  },
  'Peak current that it may make.': {
    de: 'Spitzenstrom, den er einschalten darf.',
    fr: 'Courant de crête qu’il peut établir.',
  },
  'One row for each protected mains way that supplies the common side of outputs.': {
    de: 'Eine Zeile je abgesichertem Netzabgang, der die gemeinsame Seite von Ausgängen speist.',
    fr: 'Une ligne par départ secteur protégé qui alimente le commun de sorties.',
  },
  'Tag of the feed, as outputs give it.': {
    de: 'Kennzeichen des Netzabgangs, wie es Ausgänge nennen.',
    fr: 'Repère du départ, tel que le donnent les sorties.',
  },
  'Nominal voltage.': { de: 'Nennspannung.', fr: 'Tension nominale.' },
  'Rating of its protection.': {
    de: 'Bemessungsstrom seiner Schutzeinrichtung.',
    fr: 'Courant assigné de sa protection.',
  },
  'Share of its outputs’ current expected at the same time, 0 to 1.': {
    de: 'Anteil des Stroms seiner Ausgänge, der gleichzeitig zu erwarten ist, 0 bis 1.',
    fr: 'Part du courant de ses sorties attendue en même temps, de 0 à 1.',
  },
  'Current of all its outputs at once.': {
    de: 'Strom aller seiner Ausgänge zugleich.',
    fr: 'Courant de toutes ses sorties à la fois.',
  },
  'Demand as a share of the rating.': {
    de: 'Strombedarf im Verhältnis zum Bemessungsstrom.',
    fr: 'Courant demandé rapporté au courant assigné.',
  },
  'The worst that the limits of this feed say.': {
    de: 'Das Ungünstigste, was die Grenzen dieses Netzabgangs ergeben.',
    fr: 'Le plus défavorable de ce que donnent les limites de ce départ.',
  },
} satisfies Area;
