import type { Area } from '../translation.ts';

/** What devices, types, supplies and enclosures, and their columns, mean. */
export const supplyHelps = {
  'One row for each group of like devices in one place: how many, of which type, on which rail and branch.': {
    de: 'Eine Zeile je Gruppe gleicher Geräte an einem Ort: wie viele, welcher Typ, an welcher Schiene und Buslinie.',
    fr: 'Une ligne par groupe d’appareils identiques en un lieu : combien, de quel type, sur quel rail et quelle ligne de bus.',
  },
  'Reference of the row, as on the drawing.': {
    de: 'Kennzeichen der Zeile wie im Plan.',
    fr: 'Repère de la ligne, comme sur le plan.',
  },
  'Room, floor or zone.': { de: 'Raum, Geschoss oder Zone.', fr: 'Local, étage ou zone.' },
  'Device type; gives the unit draw, the points and the diversity where the row has none of its own.': {
    de: 'Gerätetyp; gibt Stromaufnahme je Gerät, Busplätze und Gleichzeitigkeitsfaktor vor, wo die Zeile keine eigenen hat.',
    fr: 'Type d’appareil ; donne le courant unitaire, les points et le facteur de simultanéité si la ligne n’en a pas.',
  },
  'How many devices.': { de: 'Anzahl der Geräte.', fr: 'Nombre d’appareils.' },
  'Supply rail that feeds the devices.': {
    de: 'Versorgungsschiene, die die Geräte speist.',
    fr: 'Rail d’alimentation des appareils.',
  },
  'Bus branch that the devices take places on.': {
    de: 'Buslinie, auf der die Geräte Plätze belegen.',
    fr: 'Ligne de bus sur laquelle les appareils occupent des points.',
  },
  'Field cable that feeds the devices.': {
    de: 'Feldleitung, die die Geräte speist.',
    fr: 'Câble de terrain qui alimente les appareils.',
  },
  'Distance along the run; empty: at its far end.': {
    de: 'Entfernung entlang der Leitung; leer: an ihrem Ende.',
    fr: 'Distance le long de la liaison ; vide : à son extrémité.',
  },
  'Current of one device at the nominal voltage of the rail; 350 mA, 0.35 A or 8.4 W may be typed.': {
    de: 'Strom eines Geräts bei der Nennspannung der Schiene; 350 mA, 0,35 A oder 8,4 W können eingegeben werden.',
    fr: 'Courant d’un appareil à la tension nominale du rail ; on peut saisir 350 mA, 0,35 A ou 8,4 W.',
  },
  'Share of the connected load expected at the same time, 0 to 1 (0 % to 100 %).': {
    de: 'Anteil der angeschlossenen Last, der gleichzeitig zu erwarten ist, 0 bis 1 (0 % bis 100 %).',
    fr: 'Part de la charge raccordée attendue en même temps, de 0 à 1 (0 % à 100 %).',
  },
  'Anything worth saying.': { de: 'Was sonst von Belang ist.', fr: 'Toute indication utile.' },
  'Current of all the devices at once.': {
    de: 'Strom aller Geräte zugleich.',
    fr: 'Courant de tous les appareils à la fois.',
  },
  'Current expected at the same time.': {
    de: 'Strom, der gleichzeitig zu erwarten ist.',
    fr: 'Courant attendu en même temps.',
  },
  'Part of what the rail may be used for that this row takes.': {
    de: 'Anteil des nutzbaren Stroms der Schiene, den diese Zeile braucht.',
    fr: 'Part du courant utilisable du rail que prend cette ligne.',
  },
  'Places taken on the bus branch.': {
    de: 'Belegte Plätze auf der Buslinie.',
    fr: 'Points occupés sur la ligne de bus.',
  },
  'Voltage at the devices on their run.': {
    de: 'Spannung an den Geräten auf ihrer Leitung.',
    fr: 'Tension aux appareils sur leur liaison.',
  },
  'One row for each kind of device: what one draws and how many places it takes on a bus branch.': {
    de: 'Eine Zeile je Geräteart: was ein Gerät aufnimmt und wie viele Plätze es auf einer Buslinie belegt.',
    fr: 'Une ligne par sorte d’appareil : ce qu’il absorbe et combien de points il occupe sur une ligne de bus.',
  },
  'Name of the type, as device rows give it.': {
    de: 'Name des Typs, wie ihn Gerätezeilen nennen.',
    fr: 'Nom du type, tel que le donnent les lignes d’appareils.',
  },
  'What it is.': { de: 'Was es ist.', fr: 'Ce que c’est.' },
  'Which kind of supply it belongs on.': {
    de: 'Art der Versorgung, an die es gehört.',
    fr: 'Sorte d’alimentation à laquelle le raccorder.',
  },
  'Current of one device at nominal voltage.': {
    de: 'Strom eines Geräts bei Nennspannung.',
    fr: 'Courant d’un appareil à la tension nominale.',
  },
  'Power of one device; used where no draw is given.': {
    de: 'Leistung eines Geräts; gilt, wo keine Stromaufnahme angegeben ist.',
    fr: 'Puissance d’un appareil ; sert si aucun courant absorbé n’est donné.',
  },
  'Whether the device draws a constant current or, as a converter does, a constant power.': {
    de: 'Ob das Gerät einen konstanten Strom aufnimmt oder, wie ein Wandler, eine konstante Leistung.',
    fr: 'Si l’appareil absorbe un courant constant ou, comme un convertisseur, une puissance constante.',
  },
  'Places that one device takes on its bus branch.': {
    de: 'Plätze, die ein Gerät auf seiner Buslinie belegt.',
    fr: 'Points qu’un appareil occupe sur sa ligne de bus.',
  },
  'Share expected at the same time, 0 to 1, for rows that give none of their own.': {
    de: 'Gleichzeitig zu erwartender Anteil, 0 bis 1, für Zeilen ohne eigenen Wert.',
    fr: 'Part attendue en même temps, de 0 à 1, pour les lignes sans valeur propre.',
  },
  'Lowest voltage at which the device works.': {
    de: 'Niedrigste Spannung, bei der das Gerät arbeitet.',
    fr: 'Tension la plus basse à laquelle l’appareil fonctionne.',
  },
  'Anything worth saying, the source of the figures first.': {
    de: 'Was von Belang ist, zuerst die Quelle der Werte.',
    fr: 'Toute indication utile, d’abord la source des valeurs.',
  },
  'Other names of the type, as takeoffs give them, with a semicolon between them.': {
    de: 'Andere Namen des Typs, wie Mengenauszüge sie nennen, durch Semikolon getrennt.',
    fr: 'Autres noms du type, tels que les donnent les métrés, séparés par un point-virgule.',
  },
  'One row for each supply rail: its rating, what may be used of it, and what the device rows ask of it.': {
    de: 'Eine Zeile je Versorgungsschiene: ihr Bemessungsstrom, was davon nutzbar ist und was die Gerätezeilen fordern.',
    fr: 'Une ligne par rail d’alimentation : son courant assigné, ce qui en est utilisable et ce que demandent les lignes d’appareils.',
  },
  'Tag of the rail, as device rows give it.': {
    de: 'Kennzeichen der Schiene, wie es Gerätezeilen nennen.',
    fr: 'Repère du rail, tel que le donnent les lignes d’appareils.',
  },
  'What the rail is kept for.': { de: 'Wofür die Schiene bestimmt ist.', fr: 'Ce à quoi le rail est réservé.' },
  'Nominal DC voltage.': { de: 'Nenngleichspannung.', fr: 'Tension continue nominale.' },
  'Rated output current of one unit.': {
    de: 'Bemessungsausgangsstrom einer Einheit.',
    fr: 'Courant de sortie assigné d’une unité.',
  },
  'Units in parallel.': { de: 'Einheiten parallel.', fr: 'Unités en parallèle.' },
  'One unit is a spare and carries nothing in the reckoning.': {
    de: 'Eine Einheit ist Reserve und zählt in der Rechnung nicht.',
    fr: 'Une unité est en réserve et n’est pas comptée dans le calcul.',
  },
  'Share of the rating that may be used where the supply is mounted.': {
    de: 'Anteil des Bemessungsstroms, der am Einbauort nutzbar ist.',
    fr: 'Part du courant assigné utilisable au lieu de montage.',
  },
  'Loading that the design aims to stay below.': {
    de: 'Auslastung, unter der die Planung bleiben soll.',
    fr: 'Taux de charge sous lequel l’étude vise à rester.',
  },
  'Rating of the fuse or breaker at the output.': {
    de: 'Bemessungsstrom der Sicherung oder des Schutzschalters am Ausgang.',
    fr: 'Courant assigné du fusible ou du disjoncteur en sortie.',
  },
  'Multiple of the rating that the supply gives into a short circuit before it limits.': {
    de: 'Vielfaches des Bemessungsstroms, das die Versorgung in einen Kurzschluss liefert, bevor sie den Strom begrenzt.',
    fr: 'Multiple du courant assigné que l’alimentation fournit en court-circuit avant de limiter le courant.',
  },
  'Output power over input power, for the losses.': {
    de: 'Verhältnis der Ausgangs- zur Eingangsleistung, für die Verlustleistung.',
    fr: 'Rapport de la puissance de sortie à la puissance d’entrée, pour les pertes.',
  },
  'Where the supply is mounted.': { de: 'Wo die Versorgung eingebaut ist.', fr: 'Lieu de montage de l’alimentation.' },
  'Temperature in its enclosure up to which the derating above holds; with «Less per kelvin» the supply gives less above it.': {
    de: 'Temperatur im Gehäuse, bis zu der der Minderungsfaktor gilt; darüber gibt die Versorgung um die „Minderung je Kelvin“ weniger ab.',
    fr: 'Température dans l’enveloppe jusqu’à laquelle vaut le facteur de déclassement ; au-delà, l’alimentation fournit moins, selon « Réduction par kelvin ».',
  },
  'Share of the rating that is lost for each kelvin above «Full up to».': {
    de: 'Anteil des Bemessungsstroms, der je Kelvin über „Voll belastbar bis“ entfällt.',
    fr: 'Part du courant assigné perdue par kelvin au-dessus de « Pleine charge jusqu’à ».',
  },
  'Current measured at its output, with its devices on.': {
    de: 'Strom, gemessen an ihrem Ausgang bei eingeschalteten Geräten.',
    fr: 'Courant mesuré à sa sortie, ses appareils étant en marche.',
  },
  'Voltage measured at its output, with its devices on.': {
    de: 'Spannung, gemessen an ihrem Ausgang bei eingeschalteten Geräten.',
    fr: 'Tension mesurée à sa sortie, ses appareils étant en marche.',
  },
  'Share by which the measured current may differ from the one worked out.': {
    de: 'Anteil, um den der gemessene Strom vom errechneten abweichen darf.',
    fr: 'Part dont le courant mesuré peut différer du courant calculé.',
  },
  'Share by which the measured voltage may differ from the one worked out.': {
    de: 'Anteil, um den die gemessene Spannung von der errechneten abweichen darf.',
    fr: 'Part dont la tension mesurée peut différer de la tension calculée.',
  },
  'What may be used: the rating of the units that count, derated.': {
    de: 'Was nutzbar ist: Bemessungsstrom der zählenden Einheiten, gemindert.',
    fr: 'Ce qui est utilisable : courant assigné des unités qui comptent, déclassé.',
  },
  'Current of all its devices at once.': {
    de: 'Strom aller ihrer Geräte zugleich.',
    fr: 'Courant de tous ses appareils à la fois.',
  },
  'Current expected of it at the same time.': {
    de: 'Strom, der gleichzeitig von ihr zu erwarten ist.',
    fr: 'Courant qui lui est demandé en même temps.',
  },
  'Demand as a share of what may be used.': {
    de: 'Strombedarf im Verhältnis zum nutzbaren Strom.',
    fr: 'Courant demandé rapporté au courant utilisable.',
  },
  'What is left up to the target.': { de: 'Was bis zum Zielwert bleibt.', fr: 'Ce qui reste jusqu’à la cible.' },
  'The common diversity at which the target is just met; above 1 even everything at once stays below it.': {
    de: 'Der gemeinsame Gleichzeitigkeitsfaktor, bei dem der Zielwert gerade eingehalten ist; über 1 bleibt selbst alles zugleich darunter.',
    fr: 'Le facteur de simultanéité commun auquel la cible est juste tenue ; au-dessus de 1, même tout à la fois reste en dessous.',
  },
  'Demand over the rating of the fuse.': {
    de: 'Strombedarf im Verhältnis zum Bemessungsstrom der Sicherung.',
    fr: 'Courant demandé rapporté au courant assigné du fusible.',
  },
  'Heat that the supply gives off at this demand.': {
    de: 'Wärme, die die Versorgung bei diesem Strombedarf abgibt.',
    fr: 'Chaleur que l’alimentation dégage à ce courant demandé.',
  },
  'The worst that the limits of this supply say.': {
    de: 'Das Ungünstigste, was die Grenzen dieser Versorgung ergeben.',
    fr: 'Le plus défavorable de ce que donnent les limites de cette alimentation.',
  },
  'One row for each enclosure: its size and mounting, and how warm it may get inside.': {
    de: 'Eine Zeile je Gehäuse: Größe und Aufstellung und wie warm es innen werden darf.',
    fr: 'Une ligne par enveloppe : ses dimensions, son montage et la température admise à l’intérieur.',
  },
  'Tag of the enclosure, as supplies give it.': {
    de: 'Kennzeichen des Gehäuses, wie es Versorgungen nennen.',
    fr: 'Repère de l’enveloppe, tel que le donnent les alimentations.',
  },
  'Outside height.': { de: 'Außenhöhe.', fr: 'Hauteur extérieure.' },
  'Outside width.': { de: 'Außenbreite.', fr: 'Largeur extérieure.' },
  'Outside depth.': { de: 'Außentiefe.', fr: 'Profondeur extérieure.' },
  'How it stands: which sides can give off heat.': {
    de: 'Wie es steht: welche Seiten Wärme abgeben können.',
    fr: 'Comment elle est placée : quels côtés peuvent dégager de la chaleur.',
  },
  'Heat that a square metre gives off for each kelvin.': {
    de: 'Wärme, die ein Quadratmeter je Kelvin abgibt.',
    fr: 'Chaleur qu’un mètre carré dégage par kelvin.',
  },
  'Heat of everything else in it.': {
    de: 'Wärme von allem anderen darin.',
    fr: 'Chaleur de tout le reste à l’intérieur.',
  },
  'Highest temperature around it.': {
    de: 'Höchste Temperatur der Umgebung.',
    fr: 'Température la plus élevée autour d’elle.',
  },
  'Highest temperature allowed inside.': {
    de: 'Höchste zulässige Temperatur im Inneren.',
    fr: 'Température la plus élevée admise à l’intérieur.',
  },
  'Heat of the supplies in it.': {
    de: 'Wärme der Versorgungen darin.',
    fr: 'Chaleur des alimentations qu’elle contient.',
  },
  'Heat given off inside.': { de: 'Wärme, die im Inneren abgegeben wird.', fr: 'Chaleur dégagée à l’intérieur.' },
  'Effective cooling surface.': { de: 'Wirksame Kühlfläche.', fr: 'Surface de refroidissement effective.' },
  'How much warmer it is inside.': {
    de: 'Um wie viel es innen wärmer ist.',
    fr: 'De combien il fait plus chaud à l’intérieur.',
  },
  'Temperature inside.': { de: 'Temperatur im Inneren.', fr: 'Température à l’intérieur.' },
  'The worst that the limits of this enclosure say.': {
    de: 'Das Ungünstigste, was die Grenzen dieses Gehäuses ergeben.',
    fr: 'Le plus défavorable de ce que donnent les limites de cette enveloppe.',
  },
} satisfies Area;
