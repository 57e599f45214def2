import type { TakeoffField } from './field.ts';

/**
 * Words that head the columns of takeoffs in English, German and French, as `plainWords` gives them. The field that
 * stands first wins where a heading holds words of several: «No. of devices» counts. Common practice, no source.
 */
export const HEADING_WORDS: Readonly<Record<TakeoffField, readonly string[]>> = {
  total: ['line total', 'row total', 'zeilensumme', 'total de la ligne'],
  // What is built several times is known by `countsUnits`.
  times: [],
  qty: [
    'qty', 'qty total', 'quantity', 'quantities', 'count', 'counted', 'nos', 'no of', 'number of', 'no off', 'amount',
    'pcs', 'pieces', 'how many', 'total',
    'menge', 'mengen', 'anzahl', 'anz', 'stuck', 'stueck', 'stuckzahl', 'stueckzahl', 'stk', 'st', 'gesamt', 'summe',
    'aufmass',
    'gesamtmenge', 'gesamtanzahl', 'gesamtzahl', 'insgesamt',
    'quantite', 'quantites', 'qte', 'qtes', 'nombre', 'nombre de', 'nb', 'nbre', 'nb de', 'quantite totale',
    'qte totale',
  ],
  price: [
    'price', 'unit price', 'cost', 'unit cost', 'preis', 'einzelpreis', 'stuckpreis', 'stueckpreis', 'ep', 'prix',
    'prix unitaire', 'p u', 'pu', 'tarif',
  ],
  draw: [
    'draw', 'unit draw', 'current', 'current draw', 'ma', 'strom', 'stromaufnahme', 'stromverbrauch', 'nennstrom',
    'courant', 'courant absorbe', 'consommation', 'intensite',
  ],
  power: ['power', 'watt', 'watts', 'leistung', 'leistungsaufnahme', 'nennleistung', 'puissance'],
  nodes: ['nodes', 'bus nodes', 'teilnehmer', 'busteilnehmer', 'participants', 'participants au bus'],
  partNumber: [
    'part number', 'part no', 'article number', 'article no', 'order number', 'order no', 'catalogue number',
    'catalogue no', 'artikelnummer', 'artikel nr', 'art nr', 'bestellnummer', 'bestell nr', 'reference fabricant',
    'reference article', 'numero d article', 'n d article',
  ],
  unit: [
    'unit', 'uom', 'unit of measure', 'einheit', 'einh', 'eh', 'me', 'mengeneinheit', 'masseinheit', 'mass einheit',
    'unite', 'unites', 'unite de mesure', 'u', 'un',
  ],
  area: [
    'area', 'fitted in', 'installed in', 'room', 'room name', 'room no', 'floor', 'storey', 'level', 'zone', 'space', 'location', 'building',
    'raum', 'raume', 'raeume', 'raumname', 'raumbezeichnung', 'raum bezeichnung', 'raum nr', 'raumnummer', 'zimmer',
    'wohnung',
    'geschoss', 'etage', 'stockwerk', 'ebene', 'bereich', 'ort', 'einbauort', 'montageort', 'standort', 'gebaude',
    'gebaeude',
    'gebaudeteil', 'gebaeudeteil', 'bauabschnitt', 'trakt',
    'local', 'locaux', 'piece', 'salle', 'niveau', 'emplacement', 'lieu', 'localisation', 'batiment', 'zone desservie',
    'implantation', 'logement', 'appartement', 'chambre', 'lieu de pose', 'nom du local', 'n de local', 'aile',
  ],
  branch: [
    'branch', 'bus branch', 'bus', 'bus line', 'busstrang', 'bus strang', 'strang', 'linie', 'buslinie', 'zweig',
    'buszweig', 'segment de bus', 'branche', 'ligne', 'ligne de bus', 'ligne bus', 'feldbus', 'bus de terrain',
  ],
  rail: [
    'rail', 'circuit', 'supply', 'power supply', 'supply rail', 'fed from', 'versorgung', 'stromversorgung',
    'spannungsversorgung',
    'netzteil', 'netzgerat', 'netzgeraet', 'speisung', 'einspeisung', 'schiene', 'versorgungsschiene', 'versorgt von',
    'versorgt aus', 'alimentation', 'alim', 'alimente par', 'alimente depuis', 'rail d alimentation',
  ],
  ref: [
    'ref', 'reference', 'drawing ref', 'tag', 'mark', 'id', 'item no', 'no', 'number', 'pos', 'position',
    'lfd nr', 'lfd', 'nr', 'referenz', 'kennzeichen', 'kennzeichnung', 'betriebsmittelkennzeichen', 'bmk', 'plan nr',
    'oz',
    'ordnungszahl', 'positionsnummer', 'pos nr', 'repere', 'reperes', 'reperage', 'rep', 'poste', 'numero', 'n', 'n o',
    'n d ordre',
  ],
  description: [
    'description', 'desc', 'designation', 'designations', 'text', 'bezeichnung', 'beschreibung', 'benennung',
    'kurztext', 'langtext',
    'geratebezeichnung', 'geraetebezeichnung', 'artikelbezeichnung', 'leistungsbeschreibung',
    'libelle', 'descriptif', 'intitule', 'nature',
  ],
  type: [
    'type', 'device', 'devices', 'device type', 'type of device', 'item', 'equipment', 'symbol', 'code', 'kind',
    'typ', 'gerat', 'geraet', 'gerate', 'geraete', 'artikel', 'betriebsmittel', 'geratetyp', 'geraetetyp', 'gerateart',
    'bauteil', 'komponente',
    'appareil', 'appareils', 'type d appareil', 'equipement', 'equipements', 'materiel', 'materiels', 'composant',
    'article', 'symbole', 'type de materiel', 'type d equipement',
  ],
  note: [
    'note', 'notes', 'remark', 'remarks', 'comment', 'comments',
    'bemerkung', 'bemerkungen', 'bem', 'anmerkung', 'anmerkungen', 'hinweis', 'hinweise', 'kommentar', 'notiz',
    'remarque', 'remarques', 'observation', 'observations', 'commentaire', 'commentaires',
  ],
};
