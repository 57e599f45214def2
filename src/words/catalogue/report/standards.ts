import type { Area } from '../translation.ts';

/** The standards behind the figures. Titles are from memory, where a language has one. */
export const standards = {
  Standards: { de: 'Normen', fr: 'Normes' },
  'Editions are for orientation; the one that applies to the job decides.': {
    de: 'Die Ausgaben dienen der Orientierung; maßgebend ist die für den Auftrag geltende.',
    fr: 'Les éditions sont données à titre indicatif\u202f; celle qui s’applique au projet fait foi.',
  },
  Standard: { de: 'Norm', fr: 'Norme' },
  Edition: { de: 'Ausgabe', fr: 'Édition' },
  Title: { de: 'Titel', fr: 'Titre' },
  'Used for': { de: 'Verwendet für', fr: 'Utilisée pour' },
  series: { de: 'Reihe', fr: 'série' },
  'IEC standard voltages': { de: 'IEC-Normspannungen', fr: 'Tensions normales de la CEI' },
  'Miniature fuses: cartridge fuse-links': {
    de: 'Geräteschutzsicherungen: G-Sicherungseinsätze',
    fr: 'Coupe-circuit miniatures\u00a0: cartouches',
  },
  'Conductors of insulated cables': { de: 'Leiter für Kabel und isolierte Leitungen', fr: 'Âmes des câbles isolés' },
  'Low-voltage electrical installations: protection against overcurrent': {
    de: 'Errichten von Niederspannungsanlagen: Schutz bei Überstrom',
    fr: 'Installations électriques à basse tension\u00a0: protection contre les surintensités',
  },
  'Circuit-breakers for household and similar installations: AC operation': {
    de: 'Leitungsschutzschalter für Hausinstallationen und ähnliche Zwecke: Wechselstrom',
    fr: 'Disjoncteurs pour installations domestiques et analogues\u00a0: fonctionnement en courant alternatif',
  },
  'Low-voltage switchgear: electromechanical contactors and motor-starters': {
    de: 'Niederspannungsschaltgeräte: elektromechanische Schütze und Motorstarter',
    fr: 'Appareillage à basse tension\u00a0: contacteurs et démarreurs de moteurs électromécaniques',
  },
  'Low-voltage switchgear: electromechanical control circuit devices': {
    de: 'Niederspannungsschaltgeräte: elektromechanische Steuergeräte',
    fr: 'Appareillage à basse tension\u00a0: appareils électromécaniques pour circuits de commande',
  },
  'Low-voltage switchgear and controlgear': { de: 'Niederspannungsschaltgeräte', fr: 'Appareillage à basse tension' },
  'Low-voltage switchgear and controlgear assemblies: general rules': {
    de: 'Niederspannungs-Schaltgerätekombinationen: allgemeine Festlegungen',
    fr: 'Ensembles d’appareillage à basse tension\u00a0: règles générales',
  },
  'Safety of transformers, reactors, power supply units: general requirements': {
    de: 'Sicherheit von Transformatoren, Drosseln, Netzgeräten: allgemeine Anforderungen',
    fr: 'Sécurité des transformateurs, bobines d’inductance, blocs d’alimentation\u00a0: exigences générales',
  },
  'Temperature-rise verification of assemblies by calculation': {
    de: 'Nachweis der Erwärmung von Schaltgerätekombinationen durch Berechnung',
    fr: 'Vérification par calcul de l’échauffement des ensembles',
  },
  'Requirements for electrical installations': {
    de: 'Anforderungen an elektrische Anlagen (britische Norm)',
    fr: 'Exigences pour les installations électriques (norme britannique)',
  },
  'National Electrical Code, NFPA 70': {
    de: 'Errichtungsvorschrift der USA, NFPA 70',
    fr: 'Code électrique des États-Unis, NFPA 70',
  },
} satisfies Area;
