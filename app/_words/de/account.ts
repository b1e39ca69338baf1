/** German. Words about signing in, e-mail and password, and coming back. Pure. */
import type * as en from '../en/account.ts';
import { day } from '../figures.ts';
import type { Worded } from '../worded.ts';

export const accountWords: Worded<typeof en.accountWords> = {
  signIn: {
    title: 'Anmelden',
    lead: 'Mit der E-Mail-Adresse und dem Passwort, die du hier selbst gewählt hast.',
    email: 'E-Mail-Adresse',
    password: 'Passwort',
    go: 'Anmelden',
    going: 'Wird angemeldet …',
    lost: 'Passwort verloren oder noch keines? Wer diesen Server betreibt, kann dir einen Link zum Wiederkommen machen.',
    switch: (name) =>
      `Auf diesem Gerät bist du als ${name} hier. Wenn du dich als jemand anders anmeldest, endet das; was ${name} eingestellt hat, bleibt.`,
  },
  account: {
    title: 'Du',
    here: (name) => `Du bist als ${name} hier.`,
    guest:
      'Bisher kennt dich nur dieser Browser. Mit E-Mail-Adresse und Passwort bist du auf jedem Gerät dieselbe Person; deine Anmerkungen und Bilder bleiben deine.',
    known: (email) => `Du meldest dich mit ${email} an.`,
    add: 'E-Mail und Passwort angeben',
    change: 'E-Mail oder Passwort ändern',
    email: 'E-Mail-Adresse',
    emailHint: 'Nur zum Anmelden. Es wird nie etwas dorthin geschickt.',
    password: 'Passwort',
    newPassword: 'Neues Passwort',
    passwordHint: 'Mindestens zehn Zeichen; ein paar Wörter geben ein gutes.',
    current: 'Jetziges Passwort',
    keep: 'Speichern',
    keeping: 'Wird gespeichert …',
    kept: 'Gespeichert. Von nun an meldest du dich damit an; auf anderen Geräten musst du dich neu anmelden.',
    leaveTitle: 'Auf diesem Gerät abmelden',
    leave: 'Abmelden',
    leaving: 'Wird abgemeldet …',
    leaveGuest:
      'Du hast keine E-Mail-Adresse angegeben. Um als du selbst wiederzukommen, bräuchtest du einen Link von der Person, die den Server betreibt.',
    leaveKnown: 'Mit E-Mail-Adresse und Passwort kommst du wieder herein.',
    leaveSure: 'Trotzdem abmelden',
    link: 'Du',
  },
  back: {
    title: 'Schön, dass du wieder da bist',
    lead: (name) =>
      `Mit diesem Link kommt ${name} wieder herein, ein einziges Mal. Er ist nur für ${name} gedacht.`,
    go: (name) => `Weiter als ${name}`,
    going: 'Wird geöffnet …',
    password: 'Neues Passwort',
    passwordHint:
      'Lass es leer, wenn das alte bleiben soll. Ein neues meldet dich auf allen anderen Geräten ab. Mindestens zehn Zeichen.',
    badTitle: 'Dieser Link geht nicht',
    bad: 'Er wurde schon benutzt oder ist abgelaufen. Bitte die Person, die den Server betreibt, um einen neuen.',
    switch: (name) => `Auf diesem Gerät bist du jetzt als ${name} hier; das endet dann.`,
  },
  makeLink: 'Link zum Wiederkommen',
  linkTo: (name) => `Einen Link zum Wiederkommen für ${name} machen`,
  makingLink: 'Wird gemacht …',
  linkFor: (name) => `Gib diesen Link ${name} und sonst niemandem`,
  linkHint: 'Er gilt einmal, drei Tage lang. Wer ihn öffnet, ist hier diese Person.',
  hostsAsk: 'Wer bist du?',
  hostNew: 'Jemand Neues',
  hostSince: (name, iso) => `${name}, Gastgeber seit ${day(iso)}`,
};
