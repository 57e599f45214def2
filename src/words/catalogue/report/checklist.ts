import type { Area } from '../translation.ts';

/** What is checked, measured and signed for. */
export const checklist = {
  'Before energising': { de: 'Vor dem Einschalten', fr: 'Avant la mise sous tension' },
  'By a competent person. Local rules and the makers’ instructions may ask for more.': {
    de: 'Durch eine Elektrofachkraft. Örtliche Bestimmungen und die Anleitungen der Hersteller können mehr verlangen.',
    fr: 'Par une personne qualifiée. Les règles locales et les notices des fabricants peuvent exiger davantage.',
  },
  'Every mains and ELV way that feeds the panel is isolated, locked off and proved dead with a tester that was proved before and after.': {
    de: 'Jede Einspeisung des Schaltschranks, Netz wie Kleinspannung, ist freigeschaltet und gegen Wiedereinschalten gesichert; die Spannungsfreiheit ist festgestellt, mit einem Spannungsprüfer, dessen Funktion davor und danach geprüft wurde.',
    fr: 'Chaque arrivée de l’armoire, secteur comme TBT, est séparée et condamnée\u202f; l’absence de tension est vérifiée avec un détecteur de tension contrôlé avant et après.',
  },
  'Insulation and polarity of every field cable are measured, with electronics disconnected.': {
    de: 'Isolationswiderstand und Polarität jeder Feldleitung sind bei abgeklemmter Elektronik gemessen.',
    fr: 'La résistance d’isolement et la polarité de chaque câble de terrain sont mesurées, électronique déconnectée.',
  },
  'Fuses and breakers fitted have the ratings of this table.': {
    de: 'Die eingesetzten Sicherungen und Schutzschalter haben die Bemessungswerte dieser Tabelle.',
    fr: 'Les fusibles et disjoncteurs montés ont les valeurs assignées de ce tableau.',
  },
  'End plates are fitted on fuse holders and on every open side of a terminal row.': {
    de: 'Abschlussplatten sitzen an Sicherungshaltern und an jeder offenen Seite einer Klemmenreihe.',
    fr: 'Les flasques d’extrémité sont en place sur les porte-fusibles et sur chaque côté ouvert d’une rangée de bornes.',
  },
  'Bridges are fitted only where terminals are meant to be commoned.': {
    de: 'Brücken sitzen nur dort, wo Klemmen verbunden sein sollen.',
    fr: 'Les ponts ne sont montés que là où des bornes doivent être reliées.',
  },
  'Both ends of every bus branch are terminated: {branches}.': {
    de: 'Jede Buslinie hat an beiden Enden ihren Busabschluss: {branches}.',
    fr: 'Chaque ligne de bus a sa terminaison aux deux extrémités\u00a0: {branches}.',
  },
  '{branch} (marked as terminated)': {
    de: '{branch} (Busabschluss eingetragen)',
    fr: '{branch} (terminaison indiquée)',
  },
  '{branch} (not marked as terminated)': {
    de: '{branch} (Busabschluss nicht eingetragen)',
    fr: '{branch} (terminaison non indiquée)',
  },
  'The output of every supply is measured before its loads are connected.': {
    de: 'Der Ausgang jeder Versorgung ist gemessen, bevor ihre Lasten angeschlossen werden.',
    fr: 'La sortie de chaque alimentation est mesurée avant le raccordement de ses charges.',
  },
  'Guards are back in place, tools and offcuts are out of the panel.': {
    de: 'Abdeckungen sind wieder angebracht, Werkzeug und Materialreste aus dem Schaltschrank entfernt.',
    fr: 'Les capots et écrans sont remis en place, les outils et les chutes sont retirés de l’armoire.',
  },
  Done: { de: 'Erledigt', fr: 'Fait' },
  Check: { de: 'Prüfung', fr: 'Contrôle' },
  'Reading or remark': { de: 'Messwert oder Bemerkung', fr: 'Relevé ou observation' },
  'Name, date': { de: 'Name, Datum', fr: 'Nom, date' },
  Commissioning: { de: 'Inbetriebnahme', fr: 'Mise en service' },
  'Voltages of supplies at their outputs, of runs at their far ends; all with the devices switched on.': {
    de: 'Spannungen der Versorgungen an ihren Ausgängen, der Leitungen an ihren Enden; alle bei eingeschalteten Geräten.',
    fr: 'Tensions des alimentations à leurs sorties, des liaisons à leurs extrémités\u202f; toutes avec les appareils en marche.',
  },
  Verdict: { de: 'Beurteilung', fr: 'Appréciation' },
  'as worked out': { de: 'wie berechnet', fr: 'conforme au calcul' },
  Signatures: { de: 'Unterschriften', fr: 'Signatures' },
  Step: { de: 'Schritt', fr: 'Étape' },
  Installed: { de: 'Montiert', fr: 'Installé' },
  Tested: { de: 'Geprüft', fr: 'Contrôlé' },
  'Handed over': { de: 'Übergeben', fr: 'Remis' },
  Name: { de: 'Name', fr: 'Nom' },
  Signature: { de: 'Unterschrift', fr: 'Signature' },
} satisfies Area;
