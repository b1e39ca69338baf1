/** What travels about things that are taken away and brought in. Types only. */

/** A board that was taken in, as it is here now. */
export interface TakenBoard {
  id: string;
  title: string;
  pictures: number;
  /** What had stayed behind when the archive was made, a sentence each. */
  leftOut: string[];
}

/** A picture that stays behind when a board is taken away, and the sentence that says why. */
export interface LeftOut {
  pictureId: string;
  caption: string | null;
  painter: string;
  why: string;
}

/** What an archive of a board would hold for somebody who takes it away. */
export interface ArchiveContents {
  title: string;
  pictures: number;
  leftOut: LeftOut[];
}

/** Something that was left out, and the sentence that says why. */
export interface LeftOutPart {
  what: string;
  why: string;
}

/** What became of a file of marks. */
export interface MarksTaken {
  taken: number;
  leftOut: LeftOutPart[];
  /** Parts of what was taken that were passed over. */
  passedOver: LeftOutPart[];
}

/** What goes when somebody deletes themselves, and what they have to hand on or delete first. */
export interface LeavingView {
  name: string;
  boards: { id: string; title: string }[];
  groups: { id: string; name: string }[];
  /** How many pictures and remarks of theirs go. */
  pictures: number;
  remarks: number;
}
