/** Words about signing in, e-mail and password, and coming back. Pure. */
import { day } from '../figures.ts';

export const accountWords = {
  signIn: {
    title: 'Sign in',
    lead: 'With the e-mail address and password you gave yourself here.',
    email: 'E-mail address',
    password: 'Password',
    go: 'Sign in',
    going: 'Signing in …',
    lost: 'Password lost, or none so far? Whoever runs this server can make you a link to come back by.',
    switch: (name: string) =>
      `On this device you are here as ${name}. Signing in as somebody else ends that; what ${name} posted stays.`,
  },
  account: {
    title: 'You',
    here: (name: string) => `You are here as ${name}.`,
    guest:
      'So far this browser alone knows you. With an e-mail address and a password you are the same person on any device; your marks and pictures stay yours.',
    known: (email: string) => `You sign in with ${email}.`,
    add: 'Add e-mail and password',
    change: 'Change e-mail or password',
    email: 'E-mail address',
    emailHint: 'Only to sign in with. Nothing is ever sent to it.',
    password: 'Password',
    newPassword: 'New password',
    passwordHint: 'At least ten characters; a few words make a good one.',
    current: 'Present password',
    keep: 'Keep it',
    keeping: 'Keeping it …',
    kept: 'Kept. From now on you sign in with these; other devices you were on have to sign in again.',
    leaveTitle: 'Sign out on this device',
    leave: 'Sign out',
    leaving: 'Signing out …',
    leaveGuest:
      'You gave no e-mail address, so you would need a link from the host to come back as yourself.',
    leaveKnown: 'You come back with e-mail address and password.',
    leaveSure: 'Sign out all the same',
    link: 'You',
  },
  back: {
    title: 'Welcome back',
    lead: (name: string) => `This link lets ${name} in again, once. It is meant for ${name} alone.`,
    go: (name: string) => `Go on as ${name}`,
    going: 'Opening …',
    password: 'New password',
    passwordHint:
      'Leave it empty to keep the old one. A new one signs you out on every other device. At least ten characters.',
    badTitle: 'This link does not work',
    bad: 'It was used already or has run out. Ask the host for a new one.',
    switch: (name: string) => `On this device you are here as ${name} now; that ends.`,
  },
  makeLink: 'Link to come back',
  linkTo: (name: string) => `Make a link for ${name} to come back`,
  makingLink: 'Making it …',
  linkFor: (name: string) => `Give this link to ${name} and to nobody else`,
  linkHint: 'It works once, for three days. Whoever opens it is that person here.',
  hostsAsk: 'Who are you?',
  hostNew: 'Somebody new',
  hostSince: (name: string, iso: string) => `${name}, host since ${day(iso)}`,
};
