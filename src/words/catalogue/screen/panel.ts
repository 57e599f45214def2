import type { Area } from '../translation.ts';

/** How full everything is, and the list of findings. */
export const panel = {
  '{n, plural, one {# over} other {# over}}': {
    de: '{n, plural, one {# überschritten} other {# überschritten}}',
    fr: '{n, plural, one {# dépassé} other {# dépassés}}',
  },
  '{n, plural, one {# near the limit} other {# near the limit}}': {
    de: '{n, plural, one {# knapp} other {# knapp}}',
    fr: '{n, plural, one {# proche de la limite} other {# proches de la limite}}',
  },
  '{n, plural, one {# incomplete} other {# incomplete}}': {
    de: '{n, plural, one {# unvollständig} other {# unvollständig}}',
    fr: '{n, plural, one {# incomplet} other {# incomplets}}',
  },
  '{n, plural, one {# within limits} other {# within limits}}': {
    de: '{n, plural, one {# in Ordnung} other {# in Ordnung}}',
    fr: '{n, plural, one {# conforme} other {# conformes}}',
  },
  '{n, plural, one {# note} other {# notes}}': {
    de: '{n, plural, one {# Hinweis} other {# Hinweise}}',
    fr: '{n, plural, one {# remarque} other {# remarques}}',
  },
  '{n, plural, one {# row} other {# rows}} over': {
    de: '{n, plural, one {# Zeile} other {# Zeilen}} überschritten',
    fr: '{n, plural, one {# ligne dépassée} other {# lignes dépassées}}',
  },
  '{n, plural, one {# row} other {# rows}} near the limit': {
    de: '{n, plural, one {# Zeile} other {# Zeilen}} knapp',
    fr: '{n, plural, one {# ligne proche} other {# lignes proches}} de la limite',
  },
  '{n, plural, one {# row} other {# rows}} incomplete': {
    de: '{n, plural, one {# Zeile} other {# Zeilen}} unvollständig',
    fr: '{n, plural, one {# ligne incomplète} other {# lignes incomplètes}}',
  },
  Over: { de: 'Überschritten', fr: 'Dépassés' },
  'Near the limit': { de: 'Knapp', fr: 'Proches de la limite' },
  Incomplete: { de: 'Unvollständig', fr: 'Incomplets' },
  Notes: { de: 'Hinweise', fr: 'Remarques' },
  Accepted: { de: 'Akzeptiert', fr: 'Acceptés' },
  '{amount} of {most}': { de: '{amount} von {most}', fr: '{amount} sur {most}' },
  '{amount} of {most}, {share}, target {target}': {
    de: '{amount} von {most}, {share}, Zielwert {target}',
    fr: '{amount} sur {most}, {share}, cible {target}',
  },
  '{amount} of {most}, {share}, {over} too much': {
    de: '{amount} von {most}, {share}, {over} zu viel',
    fr: '{amount} sur {most}, {share}, {over} de trop',
  },
  '{amount} of {most}, {share}, {left} left': {
    de: '{amount} von {most}, {share}, Reserve {left}',
    fr: '{amount} sur {most}, {share}, marge {left}',
  },
  '{points} of {limit} points': { de: '{points} von {limit} Plätzen', fr: '{points} points sur {limit}' },
  '{points} of {limit} points, {share}, {beyond} too many': {
    de: '{points} von {limit} Plätzen, {share}, {beyond} zu viel',
    fr: '{points} points sur {limit}, {share}, {beyond} de trop',
  },
  '{points} of {limit} points, {share}, {kept} into the reserve': {
    de: '{points} von {limit} Plätzen, {share}, {kept} in der Reserve',
    fr: '{points} points sur {limit}, {share}, {kept} pris sur la réserve',
  },
  '{points} of {limit} points, {share}, {free} free': {
    de: '{points} von {limit} Plätzen, {share}, {free} frei',
    fr: '{points} points sur {limit}, {share}, reste {free}',
  },
  '{inside} inside, no most given': {
    de: '{inside} innen, ohne Höchstwert',
    fr: '{inside} à l’intérieur, sans maximum indiqué',
  },
  '{inside} inside of {most}': {
    de: '{inside} innen, höchstens {most}',
    fr: '{inside} à l’intérieur, maximum {most}',
  },
  '{inside} inside of {most}, {kelvin} too warm': {
    de: '{inside} innen, höchstens {most}: {kelvin} zu warm',
    fr: '{inside} à l’intérieur, maximum {most}\u00a0: {kelvin} de trop',
  },
  '{inside} inside of {most}, {kelvin} left': {
    de: '{inside} innen, höchstens {most}, Reserve {kelvin}',
    fr: '{inside} à l’intérieur, maximum {most}, marge {kelvin}',
  },
  'no working voltage, needs {needed}': {
    de: 'keine Betriebsspannung, erforderlich {needed}',
    fr: 'aucune tension de service, requis {needed}',
  },
  'no working voltage, need unknown': {
    de: 'keine Betriebsspannung, erforderliche Spannung unbekannt',
    fr: 'aucune tension de service, tension requise inconnue',
  },
  'end voltage unknown, needs {needed}': {
    de: 'Endspannung unbekannt, erforderlich {needed}',
    fr: 'tension en bout inconnue, requis {needed}',
  },
  'end voltage unknown, need unknown': {
    de: 'Endspannung unbekannt, erforderliche Spannung unbekannt',
    fr: 'tension en bout inconnue, tension requise inconnue',
  },
  '{end}, needs {needed}; drop {drop} of {most}': {
    de: '{end}, erforderlich {needed}; Spannungsfall {drop} von {most}',
    fr: '{end}, requis {needed}\u202f; chute {drop} sur {most}',
  },
  '{end}, need unknown; drop {drop} of {most}': {
    de: '{end}, erforderliche Spannung unbekannt; Spannungsfall {drop} von {most}',
    fr: '{end}, tension requise inconnue\u202f; chute {drop} sur {most}',
  },
  '{sentence}; see {column}': { de: '{sentence}; siehe {column}', fr: '{sentence}\u202f; voir {column}' },
  'Bus branches': { de: 'Buslinien', fr: 'Lignes de bus' },
  'No supplies yet.': { de: 'Noch keine Versorgungen.', fr: 'Pas encore d’alimentations.' },
  'No bus branches yet.': { de: 'Noch keine Buslinien.', fr: 'Pas encore de lignes de bus.' },
  'No runs yet.': { de: 'Noch keine Leitungen.', fr: 'Pas encore de liaisons.' },
  'No outputs yet.': { de: 'Noch keine Ausgänge.', fr: 'Pas encore de sorties.' },
  'No feeds yet.': { de: 'Noch keine Netzabgänge.', fr: 'Pas encore de départs secteur.' },
  'No enclosures yet.': { de: 'Noch keine Gehäuse.', fr: 'Pas encore d’enveloppes.' },
  'All {n} supplies': { de: 'Alle {n} Versorgungen', fr: 'Les {n} alimentations' },
  'All {n} branches': { de: 'Alle {n} Buslinien', fr: 'Les {n} lignes de bus' },
  'All {n} runs': { de: 'Alle {n} Leitungen', fr: 'Les {n} liaisons' },
  'All {n} outputs': { de: 'Alle {n} Ausgänge', fr: 'Les {n} sorties' },
  'All {n} feeds': { de: 'Alle {n} Netzabgänge', fr: 'Les {n} départs secteur' },
  'All {n} enclosures': { de: 'Alle {n} Gehäuse', fr: 'Les {n} enveloppes' },
  'The worst {n} only': { de: 'Nur die {n} kritischsten', fr: 'Seulement les {n} plus critiques' },
  Findings: { de: 'Befunde', fr: 'Constats' },
  'Findings: {group} only': { de: 'Befunde: nur {group}', fr: 'Constats\u00a0: {group} seulement' },
  'Findings by severity': { de: 'Befunde nach Schwere', fr: 'Constats par gravité' },
  'Show these findings only, or all again': {
    de: 'Nur diese Befunde anzeigen, oder wieder alle',
    fr: 'Afficher seulement ces constats, ou de nouveau tous',
  },
  'Show all {n}': { de: 'Alle {n} anzeigen', fr: 'Afficher les {n}' },
  'Show {n} more of {all}': { de: 'Weitere {n} von {all} anzeigen', fr: 'Afficher {n} de plus sur {all}' },
  'Nothing was found.': { de: 'Keine Befunde.', fr: 'Aucun constat.' },
  '{sheet}, row {row}, {column}': { de: '{sheet}, Zeile {row}, {column}', fr: '{sheet}, ligne {row}, {column}' },
  'Accept this finding': { de: 'Diesen Befund akzeptieren', fr: 'Accepter ce constat' },
  'Accept this finding, with a reason and a name': {
    de: 'Diesen Befund mit Begründung und Namen akzeptieren',
    fr: 'Accepter ce constat, avec un motif et un nom',
  },
  'The finding is open again': { de: 'Der Befund ist wieder offen', fr: 'Le constat est de nouveau ouvert' },
  Withdraw: { de: 'Zurückziehen', fr: 'Retirer' },
  'Acceptance of the finding': { de: 'Akzeptieren des Befunds', fr: 'Acceptation du constat' },
  'Why it is accepted': { de: 'Warum er akzeptiert wird', fr: 'Motif de l’acceptation' },
  By: { de: 'Von', fr: 'Par' },
  On: { de: 'Am', fr: 'Le' },
  Accept: { de: 'Akzeptieren', fr: 'Accepter' },
  'Accept …': { de: 'Akzeptieren …', fr: 'Accepter …' },
  Cancel: { de: 'Abbrechen', fr: 'Annuler' },
  why: { de: 'warum', fr: 'pourquoi' },
  'by whom': { de: 'von wem', fr: 'par qui' },
  'on which date': { de: 'an welchem Tag', fr: 'à quelle date' },
  '{one} and {other}': { de: '{one} und {other}', fr: '{one} et {other}' },
  'Say {missing} it is accepted.': {
    de: 'Angeben, {missing} der Befund akzeptiert wird.',
    fr: 'Indiquer {missing} le constat est accepté.',
  },
  'Worse than when it was accepted by {name} on {date}: {reason}': {
    de: 'Verschlechtert, seit {name} ihn am {date} akzeptiert hat: {reason}',
    fr: 'Aggravé depuis l’acceptation par {name} le {date}\u00a0: {reason}',
  },
  'Accepted by {name} on {date}: {reason}': {
    de: 'Akzeptiert von {name} am {date}: {reason}',
    fr: 'Accepté par {name} le {date}\u00a0: {reason}',
  },
} satisfies Area;
