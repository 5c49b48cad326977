/** The shapes of a piece that is being built. Python's side: calc/building/saved.py, calc/building/piece_told.py, calc/door_pieces.py. */

import type { Answer, Bench, Cell, Refusal, Result } from "./shapes";

/** One thing the maker did, as it stands in a file: shared/piece.schema.json. */
export interface Did {
  act: "give" | "cut" | "uncut" | "first";
  name: string;
  text: string;
  unit: string;
  mark: string;
}

export interface Saved {
  format: string;
  version: number;
  piece: string;
  title: string;
  bench: Bench;
  entries: Did[];
}

/** One act as the door takes it. */
export interface Do {
  act: string;
  name: string;
  text: string;
}

/** An entry that Python has not taken up yet. Those of one `hold` of a field follow on one another as one entry. */
export interface Pending {
  act: "give" | "cut" | "uncut" | "first" | "undo" | "clear" | "example" | "all" | "settle";
  name: string;
  text: string;
  hold: string;
  all?: [string, string][];
}

/**
 * A piece as it is kept on this device. `rev` is another with every change, "" before the first; `steps` holds how many entries
 * there were before each step, `floor` how many it began with; `lent` names what is still the example's; `drafts` holds texts
 * that are typed and not taken up, by field; `gone` says when it was deleted.
 */
export interface Kept {
  id: string;
  rev: string;
  at: number;
  gone: number;
  record: Saved;
  steps: number[];
  floor: number;
  hold: string;
  lent: string[];
  drafts: Record<string, string>;
  pending: Pending[];
}

/** A size or a given as it stands. */
export interface Stands extends Cell {
  name: string;
  label: string;
  kind: string;
  part?: string;
  help?: string;
  state: string;
  can_be_cut: boolean;
  typed: string;
  read?: string;
  for?: string;
  /** The sizes of which nothing is said because this was left out. */
  unsaid?: string[];
  entry: string;
}

export interface Gap {
  name: string;
  part: string;
  by: number;
  say: string;
  choices: { say: string; name: string; text: string }[];
}

export interface Alike {
  names: string[];
  fits: boolean;
  say: string;
}

export interface Settled {
  piece: string;
  whole: boolean;
  givens: Stands[];
  sizes: Stands[];
  gaps: Gap[];
  alike: Alike[];
  /** The cuts that the maker says came first; those that would change something if they had. */
  first: string[];
  contested: string[];
  broken: { name: string; say: string }[];
  impossible: { name: string; say: string }[];
  refusals: { field: string; say: string; instead: string }[];
}

export interface Change {
  name: string;
  label: string;
  before: Cell;
  after: Cell;
  by: number | null;
  amount: string;
}

export interface Changes {
  sizes: Change[];
  gaps: Gap[];
  alike: Alike[];
  broken: string[];
  impossible: string[];
}

/** What the last entry did, `at` the field it was made in. */
export interface Told {
  at: string;
  changes: Changes;
}

export interface PieceReply {
  ok: boolean;
  record?: Saved;
  settled?: Settled | undefined;
  changes?: Changes;
  answer?: Result | null;
  refusals?: Refusal[];
  fault?: string;
  /** Told sooner; the rest of the answer follows. */
  more?: boolean;
}

/** A line of the list of pieces kept. */
export interface OnShelf {
  id: string;
  piece: string;
  title: string;
  at: number;
  gone: number;
  cuts: number;
}

/** The small sheet about one number. */
export interface About {
  answer: Answer | Stands;
  why: { chain: Link[]; follows: { name: string; label: string }[] } | null;
  trust: { say: string; slips: Slip[] } | null;
  wanted: string;
  given: string;
  found: Found | null;
  refusal: string;
}

export interface Link {
  name: string;
  label: string;
  state: string;
  letters: string;
  numbers: string;
  result: string;
  because: string;
}

export interface Slip {
  name: string;
  label: string;
  mark: number;
  by: { text: string; value: number } | null;
}

export interface Found {
  given: string;
  reached: boolean;
  text: string;
  answer: Cell;
  on_rule: { text: string; answer: Cell } | null;
  say: string;
}

/** What a view may ask for on a piece's page, and of any number. */
export interface PieceActs {
  draft(name: string, text: string): void;
  record(name: string): void;
  tick(name: string, on: boolean): void;
  tickAll(names: string[]): void;
  first(name: string): void;
  choose(name: string, text: string): void;
  undo(): void;
  title(title: string): void;
  copy(): void;
  another(): void;
  begin(): void;
  remove(id: string): void;
  bringBack(id: string): void;
  save(): void;
  load(file: File | undefined): void;
  print(): void;
  about(answer: Answer | Stands): void;
  ask(change: Partial<About>): void;
  find(): void;
  use(text: string): void;
  close(): void;
}
