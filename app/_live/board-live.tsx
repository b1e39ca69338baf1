'use client';
/**
 * The live board on the screen: opens the rooms, and gives every part below what it may read and write.
 *
 * In the flow: board-store -> [BoardLiveProvider] -> useBoardLive in easel, planes, ladder and talk. Pointers
 * move twenty times a second and have a hook of their own, so that nothing else redraws with them.
 */
import {
  createContext,
  type ReactNode,
  useContext,
  useEffect,
  useMemo,
  useState,
  useSyncExternalStore,
} from 'react';
import type * as Y from 'yjs';
import type { BoardView } from '#server/core/contract/responses.ts';
import type { RoomName } from '#server/core/live/layout.ts';
import { mayHide } from '#server/core/live/mark-sight.ts';
import { mayWrite, mayWriteRoom } from '#server/core/live/permission.ts';
import type { PresentPerson } from '#server/core/live/presence.ts';
import type { BoardLive, Permissions, PointerHere, Preview } from './board-live-types.ts';
import { BoardStore, type LocalPresence } from './board-store.ts';
import { boardInClass, classView, mayInClass } from './class-view.ts';
import { clearPictureCopies } from './contact.ts';
import type { Documents } from './documents.ts';
import { liveAddress } from './live-address.ts';
import { heldByOther, peopleHere, pointersHere, whenFree } from './presence.ts';
import { BoardReaders, writerOf } from './read-board.ts';
import { veil } from './veil.ts';
import { writersFor } from './writers.ts';

interface Inside {
  live: BoardLive;
  store: BoardStore;
  setPreview(preview: Preview | null): void;
}

const BoardLiveContext = createContext<Inside | null>(null);
/** Changes with every step of a drag, so it stands apart: only the ladder draws again. */
const PreviewContext = createContext<Preview | null>(null);

function useInside(): Inside {
  const inside = useContext(BoardLiveContext);
  if (!inside) throw new Error('The live board is used outside BoardLiveProvider.');
  return inside;
}

/** @throws Error outside a `BoardLiveProvider`: a bug. */
export function useBoardLive(): BoardLive {
  return useInside().live;
}

/** Opens the room of a painting for as long as the caller shows it; null opens none. */
export function usePaintingRoom(pictureId: string | null): void {
  const { store } = useInside();
  useEffect(() => (pictureId ? store.look(`painting/${pictureId}`) : undefined), [store, pictureId]);
}

/** The document of a room for as long as the caller needs it; null until it has come. */
export function useRoomDocument(name: RoomName | null): Y.Doc | null {
  const { store } = useInside();
  useEffect(() => (name ? store.look(name) : undefined), [store, name]);
  return name && store.loaded(name) ? store.doc(name) : null;
}

/** Who is here, for those who follow every move: it changes twenty times a second and draws nothing by itself. */
export interface PresenceLine {
  subscribePresence(listener: () => void): () => void;
  presentNow(): readonly PresentPerson[];
  ownClientId(): number;
  connection(): BoardLive['connection'];
  tell(change: Pick<LocalPresence, 'look' | 'with' | 'wish' | 'thanks'>): void;
}

/** Stays the same object for the life of the board. */
export function usePresenceLine(): PresenceLine {
  return useInside().store;
}

/** Other people's hands over the pictures; in a silent look nobody points. */
export function usePointers(): readonly PointerHere[] {
  const { store, live } = useInside();
  const present = useSyncExternalStore(store.subscribePresence, store.presentNow, store.presentNow);
  const silent = live.class.silentId !== null;
  return useMemo(() => (silent ? [] : pointersHere(present, store.ownClientId())), [present, store, silent]);
}

/** Measures worked out in this browser while an outline is pulled, or null. */
export function useShownPreview(): Preview | null {
  return useContext(PreviewContext);
}

/** For the part that works the preview out. */
export function useSetPreview(): (preview: Preview | null) => void {
  return useInside().setPreview;
}

function permissionsOn(board: BoardView): Permissions {
  const painters = new Map(board.pictures.map(({ id, painter }) => [id, painter.id]));
  return {
    setup: mayWriteRoom(writerOf(board, null), 'setup'),
    painting: (pictureId) => mayWriteRoom(writerOf(board, painters.get(pictureId) ?? null), 'painting'),
    intention: (pictureId) =>
      mayWrite(writerOf(board, painters.get(pictureId) ?? null), 'painting', 'intention'),
    answer: (pictureId) => mayWrite(writerOf(board, painters.get(pictureId) ?? null), 'painting', 'answers'),
    mark: mayWriteRoom(writerOf(board, null), 'marks'),
    remarksOn: (pictureId) => {
      const isReference = board.pictures.some(({ id, kind }) => id === pictureId && kind === 'reference');
      return mayHide(writerOf(board, painters.get(pictureId) ?? null), { isReference });
    },
    allowSketch: (pictureId) =>
      mayWrite(writerOf(board, painters.get(pictureId) ?? null), 'painting', 'allows'),
    cards: board.role === 'teacher' || board.role === 'host',
  };
}

function documentsOf(store: BoardStore, board: BoardView): Documents {
  const references = new Set(board.pictures.flatMap(({ id, kind }) => (kind === 'reference' ? [id] : [])));
  return {
    setup: () => store.doc('setup'),
    marks: () => store.doc('marks'),
    painting: (pictureId) => store.doc(`painting/${pictureId}`),
    isReference: (pictureId) => references.has(pictureId),
    writer: writerOf(board, null),
    together: (act) => store.history.together(act),
  };
}

/** What can be read now; the same parts keep their identity while their documents stay as they are. */
function readingsOf(
  store: BoardStore,
  readers: BoardReaders,
  board: BoardView,
  { documents, rooms }: { documents: Documents; rooms: readonly RoomName[] },
) {
  const { setup, marks, painting, isReference } = documents;
  const remarks = readers.said.remarks(board, (pictureId, kind) => {
    const room = kind === 'reference' ? 'setup' : (`painting/${pictureId}` as const);
    return store.loaded(room) ? store.doc(room) : null;
  });
  return {
    board,
    connection: store.connection(),
    ready: rooms.every((name) => name === 'class' || store.loaded(name)),
    closedSentence: store.closedSentence(),
    offlineSince: store.offlineSince(),
    waiting: store.waiting(),
    refusals: store.refusals,
    planes: readers.planes(setup()),
    outlinesOf: (pictureId: string) =>
      isReference(pictureId)
        ? readers.outlines('reference', setup(), pictureId)
        : readers.outlines('painting', painting(pictureId), pictureId),
    photoOf: (pictureId: string) => readers.photo(painting(pictureId)),
    intentionOf: (pictureId: string) => readers.intention(painting(pictureId)),
    conditions: readers.conditions(setup()),
    air: readers.air(setup()),
    focusOf: (pictureId: string) => readers.focus(painting(pictureId)),
    meantOf: (pictureId: string) => readers.meant(painting(pictureId)),
    answersOf: (pictureId: string) => readers.answers(isReference(pictureId) ? setup() : painting(pictureId)),
    cardsOf: (pictureId: string) => readers.cards(painting(pictureId)),
    marks: readers.marks(marks(), board, remarks),
    remarksKnown: (pictureId: string) => (remarks.get(pictureId) ?? null) !== null,
    nods: readers.said.nods(marks(), board),
    allowsSketch: (pictureId: string) => remarks.get(pictureId)?.allowsSketch ?? false,
    resultNumber: (pictureId: string) => readers.result(painting(pictureId))?.number ?? null,
    pendingOf: (pictureId: string) => readers.result(painting(pictureId))?.pending ?? null,
    canUndo: store.history.canUndo,
    canRedo: store.history.canRedo,
    boardChanged: store.boardChanged,
  };
}

interface ProviderProps {
  board: BoardView;
  /** What the page said: whether a class keeps references and figures back. */
  veiled?: boolean;
  /** Rooms that are open all the time; the same list for the life of the provider. */
  rooms?: readonly RoomName[];
  children: ReactNode;
}

const BOARD_ROOMS: readonly RoomName[] = ['class', 'setup', 'marks'];

/** @param board As last fetched; its own id, person and role stay the same for the life of the provider. */
export function BoardLiveProvider({ board, veiled = false, rooms = BOARD_ROOMS, children }: ProviderProps) {
  const [{ store, readers }] = useState(() => ({
    store: new BoardStore(liveAddress(board.id), board.id, { ...board.me, role: board.role, self: true }),
    readers: new BoardReaders(),
  }));
  const [preview, setPreview] = useState<Preview | null>(null);
  useEffect(() => {
    const letGo = rooms.map((name) => store.look(name));
    return () => {
      for (const go of letGo) go();
    };
  }, [store, rooms]);
  useLine(store, board);
  const version = useSyncExternalStore(store.subscribe, store.version, store.version);
  const present = useSyncExternalStore(store.subscribePresence, store.presentNow, store.presentNow);
  const people = usePeople(present, store);
  const holds = present.map(({ clientId, hold }) => (hold ? `${clientId} ${hold.what}` : '')).join();
  const fixed = useMemo(() => {
    const documents = documentsOf(store, board);
    const painters = new Map(board.pictures.map(({ id, painter }) => [id, painter.id]));
    const own = (pictureId: string) => painters.get(pictureId) === board.me.id;
    return { documents, may: permissionsOn(board), write: writersFor(documents), own };
  }, [store, board]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `version` and `holds` stand for what the store holds.
  const inside = useMemo<Inside>(() => {
    const room = { doc: store.doc('class'), loaded: store.loaded('class'), aheadMs: store.aheadMs() };
    const inClass = classView(board, room, veiled);
    const live: BoardLive = {
      ...veil(readingsOf(store, readers, board, { documents: fixed.documents, rooms }), inClass, fixed.own),
      board: boardInClass(board, inClass),
      class: inClass,
      ...{ people, may: mayInClass(fixed.may, inClass), write: fixed.write },
      dismissRefusal: (id) => store.dismissRefusal(id),
      heldBy: (what) => heldByOther(store.present, what, store.ownClientId()),
      hold: (what) => store.hold(what),
      letGo: (what) => store.letGo(what),
      paintingsOpen: (ids) => store.keepOpen(ids.map((id) => `painting/${id}` as const)),
      whenFree: (what, act) => whenFree(store, what, act),
      point: (at) => store.point(at),
      undo: () => store.history.undo(),
      redo: () => store.history.redo(),
    };
    return { live, store, setPreview };
  }, [store, readers, board, veiled, fixed, people, rooms, version, holds]);
  const { known, silentId } = inside.live.class;
  useEffect(() => {
    if (known && silentId === null) store.unveil();
  }, [store, known, silentId]);
  return (
    <BoardLiveContext value={inside}>
      <PreviewContext value={preview}>{children}</PreviewContext>
    </BoardLiveContext>
  );
}

/** What the browser itself says of the network; and what it may keep of the pictures that are there. */
function useLine(store: BoardStore, board: BoardView): void {
  useEffect(() => {
    const [up, down] = [() => store.networkChanged(true), () => store.networkChanged(false)];
    window.addEventListener('online', up);
    window.addEventListener('offline', down);
    return () => {
      window.removeEventListener('online', up);
      window.removeEventListener('offline', down);
    };
  }, [store]);
  useEffect(() => {
    clearPictureCopies(
      board.id,
      board.pictures.map(({ id }) => id),
    );
  }, [board.id, board.pictures]);
}

/** People keep their identity while the same ones are here, whatever their hands do. */
function usePeople(present: BoardStore['present'], store: BoardStore) {
  const key = present.map(({ person }) => `${person.id} ${person.name} ${person.role}`).join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` stands for who is in `present`.
  return useMemo(() => peopleHere(present, store.me), [key, store]);
}
