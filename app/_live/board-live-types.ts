/**
 * What the live board offers to every part of the board screen.
 *
 * In the flow: live documents -> [this shape] -> easel, planes, ladder, talk. Planes run far to near.
 * Coordinates are 0..1 of the upright original. Types only.
 */
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import type { BoardView } from '#server/core/contract/responses.ts';
import type {
  Card,
  Condition,
  FractionPoint,
  LabColour,
  Outline,
  PlaneKind,
  PlaneTilt,
} from '#server/core/contract/setup.ts';
import type { LiveAnswer, LiveCard, LivePhoto } from '#server/core/live/layout.ts';
import type { ClassView } from './class-view.ts';
import type { MarkView, MarkWriters, Nod, RemarkWriters } from './mark-types.ts';

/** `connecting` at first; `catching-up` after a gap; `offline` while the line is down; `closed` for good. */
export type ConnectionState = 'connecting' | 'connected' | 'catching-up' | 'offline' | 'closed';

export interface PersonHere {
  id: string;
  name: string;
  role: string;
  /** True for the person at this screen. */
  self: boolean;
}

export interface PlaneView {
  id: string;
  name: string;
  kind: PlaneKind;
  tilt: PlaneTilt | null;
  /** 1 = the farthest. */
  number: number;
  /** Reason a teacher gave for not trusting the reference here, or null. */
  unreliable: string | null;
}

/** The server took something back: its sentence, and what the person had written, kept here. */
export interface Refusal {
  id: string;
  sentence: string;
  /** The person's own words that were not taken, or null. */
  draft: string | null;
}

/** Someone's hand over a picture; 0..1 of the upright original. */
export interface PointerHere {
  clientId: number;
  name: string;
  pictureId: string;
  x: number;
  y: number;
}

/** Measures worked out in this browser while an outline is dragged, until the server's result is there. */
export interface Preview {
  pictureId: string;
  document: MeasureDocument;
}

/** What the person at this screen may write. The server decides again by effect. */
export interface Permissions {
  /** Planes, their order, outlines on references. */
  setup: boolean;
  /** Outlines and photo correction of one painting. */
  painting(pictureId: string): boolean;
  mark: boolean;
  /** Hiding remarks on a picture, and saying what became of them. */
  remarksOn(pictureId: string): boolean;
  /** Letting others sketch over a painting. */
  allowSketch(pictureId: string): boolean;
  /** Intention and focus of one painting. */
  intention(pictureId: string): boolean;
  /** Answers to cards and readings of one painting. */
  answer(pictureId: string): boolean;
  /** Changing, adding, ordering and leaving out adjustment cards. */
  cards: boolean;
}

/** A plane to be taken together with others. */
export interface NewPlane {
  name: string;
  kind: PlaneKind;
  outline: Outline;
}

/** Every write is one undoable step of this person; what is typed has the field's own undo. */
export interface PlaneWriters {
  /** @param index Place far to near, 0 = the farthest; left out = the nearest. @throws Problem `setup-invalid`. */
  addPlane(plane: { name: string; kind: PlaneKind }, index?: number): string;
  /** @throws Problem `setup-invalid` when the name is empty or too long. */
  changePlane(planeId: string, change: { name?: string; kind?: PlaneKind; tilt?: PlaneTilt | null }): void;
  movePlane(planeId: string, toIndex: number): void;
  /** Deletes a plane with its outlines on references. */
  deletePlane(planeId: string): void;
  /** @throws Problem `outline-invalid`. */
  setOutline(pictureId: string, planeId: string, outline: Outline): void;
  deleteOutline(pictureId: string, planeId: string): void;
  /**
   * Puts a whole set of planes with their outlines on one picture in the place of the planes that are there.
   * @param planes Far to near, twelve at most. @returns Their ids. @throws Problem `outline-invalid`.
   */
  takePlanes(pictureId: string, planes: readonly NewPlane[]): string[];
  /** Lays outlines on one picture, by plane id, in the place of those of the same planes. @throws Problem as above. */
  layOutlines(pictureId: string, outlines: ReadonlyMap<string, Outline>): void;
  /**
   * The part of a plane that was split off on one picture, as a plane of its own next to it, nearer. On other pictures it
   * has no outline yet. @returns Its id. @throws Problem `setup-invalid` (twelve planes already), `outline-invalid`.
   */
  splitPlane(pictureId: string, planeId: string, name: string, outline: Outline): string | null;
  /**
   * Makes one plane part of another. @param outlines Of the kept plane as it then is, by picture; the other plane goes as
   * by `deletePlane`. @throws Problem `outline-invalid`.
   */
  mergePlanes(keptId: string, goneId: string, outlines: ReadonlyMap<string, Outline>): void;
}

export interface PaintingWriters {
  setCorners(pictureId: string, corners: NonNullable<LivePhoto['corners']> | null): void;
  setCards(pictureId: string, cards: Card[] | null): void;
  setSize(pictureId: string, size: [number, number] | null): void;
  /** Replaces the intention by the smallest edit that leads to `text`. */
  writeIntention(pictureId: string, text: string): void;
}

/** What is said of the scene as a whole, and how far the reference can be trusted. */
export interface SceneWriters {
  setCondition(condition: Condition, holds: boolean): void;
  /** @param colour Null goes back to the measured air colour. */
  setAir(pictureId: string, colour: LabColour | null): void;
  /** @param reason At most 400 characters; null = the reference can be trusted here. */
  setUnreliable(planeId: string, reason: string | null): void;
}

/** What painter and teacher say to readings and adjustment cards of one painting. */
export interface CritiqueWriters {
  /** @param point In 0..1 of the upright original; null = no focus. */
  setFocus(pictureId: string, point: FractionPoint | null): void;
  /** @param key `V4` for every plane, `V4-<planeId>` for one. @param reason May be empty; null = not meant. */
  setMeant(pictureId: string, key: string, reason: string | null): void;
  /** @param key Key of a card (`plane-<id>`, `picture`, `photo`, `own-<id>`) or id of a mark. */
  setAnswer(pictureId: string, key: string, answer: LiveAnswer | null): void;
  /** Sets parts of a card; null takes a part back to what was measured. */
  changeCard(pictureId: string, key: string, change: { [P in keyof LiveCard]?: LiveCard[P] | null }): void;
  /** A card of a teacher's own. @returns Its key. */
  addCard(pictureId: string, card: LiveCard): string;
  /** Puts cards into a new order, as one step: key of a card → its order. */
  orderCards(pictureId: string, orders: ReadonlyMap<string, string>): void;
  /** A measured card as measured again; a card of a teacher's own gone. */
  clearCard(pictureId: string, key: string): void;
}

export interface BoardWriters
  extends PlaneWriters,
    PaintingWriters,
    SceneWriters,
    CritiqueWriters,
    MarkWriters,
    RemarkWriters {}

export interface BoardLive {
  /** The class that is running, or none, as this person is concerned. */
  class: ClassView;
  /** The board as last fetched; a newer one comes in as a prop after `boardChanged` rises. */
  board: BoardView;
  connection: ConnectionState;
  /** True once planes, outlines and marks have come from the server. */
  ready: boolean;
  /** The server's sentence when `connection` is `closed`, else null. */
  closedSentence: string | null;
  /** When the line went, in ms of this machine's clock, while it is down. */
  offlineSince: number | null;
  /** What waits to be sent: root key and entry of each, as "marks/<id>". */
  waiting: readonly string[];
  refusals: readonly Refusal[];
  dismissRefusal(id: string): void;
  /** One entry a person, this one first. */
  people: readonly PersonHere[];
  planes: readonly PlaneView[];
  /** Outlines by plane id, of a reference or of a painting whose room is open. */
  outlinesOf(pictureId: string): ReadonlyMap<string, Outline>;
  /** Opens the rooms of these paintings for good and waits until they are there, or a few seconds. */
  paintingsOpen(pictureIds: readonly string[]): Promise<void>;
  photoOf(pictureId: string): LivePhoto;
  intentionOf(pictureId: string): string;
  /** Conditions of the scene, in the order of the contract. */
  conditions: readonly Condition[];
  /** Air colours that people picked, by picture. */
  air: ReadonlyMap<string, LabColour>;
  /** Where the painter wants the eye to go, in 0..1 of the upright original; null = not said. */
  focusOf(pictureId: string): FractionPoint | null;
  /** `V4` or `V4-<planeId>` → the painter's reason, which may be empty. */
  meantOf(pictureId: string): ReadonlyMap<string, string>;
  /** Key of a card or id of a mark → the painter's answer; on a reference of whoever runs the scene. */
  answersOf(pictureId: string): ReadonlyMap<string, LiveAnswer>;
  /** Key of a card → what a teacher changed on it. */
  cardsOf(pictureId: string): ReadonlyMap<string, LiveCard>;
  /**
   * Oldest first, of references and of paintings whose room is open: `usePaintingRoom`, `paintingsOpen`. What this
   * person may not see is left out.
   */
  marks: readonly MarkView[];
  /** Whether what is said of the remarks on a picture is here, and with it its marks. */
  remarksKnown(pictureId: string): boolean;
  /** Who nods at a mark, by name; a mark that nobody nods at is missing. */
  nods: ReadonlyMap<string, readonly Nod[]>;
  /** Whether that painting may be sketched over. Needs its room. */
  allowsSketch(pictureId: string): boolean;
  /** Rises with every new result; null before the first. Needs the painting's room: `usePaintingRoom`. */
  resultNumber(pictureId: string): number | null;
  /** What the server is doing about that painting, in words, or null. */
  pendingOf(pictureId: string): string | null;
  /** Name of the other person who drags `what` just now, or null. */
  heldBy(what: string): string | null;
  /** Says to the others that this person drags `what`; null lets go. */
  hold(what: string | null): void;
  /** Lets go of `what`, if that is what this person holds. */
  letGo(what: string): void;
  /** Runs `act` now, or, when somebody else took `what` first, once they have let go and their change is here. */
  whenFree(what: string, act: () => void): void;
  /** Where this person's hand is; null when it leaves. Sent about 20 times a second at most. */
  point(at: { pictureId: string; x: number; y: number } | null): void;
  may: Permissions;
  write: BoardWriters;
  /** Undo and redo of this person's own steps only. */
  undo(): void;
  redo(): void;
  canUndo: boolean;
  canRedo: boolean;
  /** Rises whenever the server says that pictures or people changed: fetch the board again. */
  boardChanged: number;
}
