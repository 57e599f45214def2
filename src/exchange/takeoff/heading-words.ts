import type { TakeoffField } from './field.ts';

/**
 * Words that head the columns of takeoffs in English, German and French, as `plainWords` gives them. The field that
 * stands first wins where a heading holds words of several: «No. of devices» counts. Common practice, no source.
 */
export const HEADING_WORDS: Readonly<Record<TakeoffField, readonly string[]>> = {
  qty: [
    'qty', 'qty total', 'quantity', 'quantities', 'count', 'counted', 'nos', 'no of', 'number of', 'no off', 'amount',
    'pcs', 'pieces', 'how many', 'total',
    'menge', 'mengen', 'anzahl', 'anz', 'stuck', 'stueck', 'stuckzahl', 'stueckzahl', 'stk', 'st', 'gesamt', 'summe',
    'quantite', 'quantites', 'qte', 'qtes', 'nombre', 'nombre de', 'nb', 'nbre', 'nb de',
  ],
  unit: ['unit', 'uom', 'unit of measure', 'einheit', 'eh', 'me', 'mengeneinheit', 'unite', 'unite de mesure'],
  area: [
    'area', 'room', 'room name', 'room no', 'floor', 'storey', 'level', 'zone', 'space', 'location', 'building',
    'raum', 'raumname', 'raum nr', 'raumnummer', 'geschoss', 'etage', 'stockwerk', 'ebene', 'bereich', 'ort',
    'einbauort', 'standort', 'gebaude', 'gebaeude',
    'local', 'locaux', 'piece', 'salle', 'niveau', 'emplacement', 'lieu', 'localisation', 'batiment', 'zone desservie',
  ],
  branch: [
    'branch', 'bus branch', 'bus', 'bus line', 'busstrang', 'strang', 'linie', 'buslinie', 'zweig', 'buszweig',
    'branche', 'ligne', 'ligne de bus', 'ligne bus',
  ],
  rail: [
    'rail', 'supply', 'power supply', 'supply rail', 'fed from', 'versorgung', 'netzteil', 'speisung', 'einspeisung',
    'schiene', 'alimentation', 'alim', 'alimente par',
  ],
  ref: [
    'ref', 'reference', 'drawing ref', 'tag', 'mark', 'id', 'item no', 'no', 'number', 'pos', 'position',
    'lfd nr', 'lfd', 'nr', 'referenz', 'kennzeichen', 'betriebsmittelkennzeichen', 'bmk', 'plan nr',
    'repere', 'rep', 'poste', 'numero', 'n', 'n o',
  ],
  description: [
    'description', 'desc', 'designation', 'text', 'bezeichnung', 'beschreibung', 'benennung', 'kurztext',
    'libelle', 'descriptif', 'intitule',
  ],
  type: [
    'type', 'device', 'devices', 'device type', 'type of device', 'item', 'equipment', 'symbol', 'code', 'kind',
    'typ', 'gerat', 'geraet', 'gerate', 'geraete', 'geratetyp', 'geraetetyp', 'gerateart', 'bauteil', 'komponente',
    'appareil', 'appareils', 'type d appareil', 'equipement', 'equipements', 'materiel', 'composant',
  ],
  note: [
    'note', 'notes', 'remark', 'remarks', 'comment', 'comments',
    'bemerkung', 'bemerkungen', 'anmerkung', 'hinweis', 'kommentar',
    'remarque', 'remarques', 'observation', 'observations', 'commentaire', 'commentaires',
  ],
};
