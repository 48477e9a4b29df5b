/** One thing that a layout has to meet, with what was computed of it. */
export interface Requirement {
  readonly id: string;
  /** "At most 115 µm of lift-off" */
  readonly asks: string;
  /** "148 µm, with the load forward" */
  readonly found: string;
  readonly isMet: boolean;
}

/** What came of a layout. */
export interface Grade {
  readonly isMet: boolean;
  readonly requirements: readonly Requirement[];
  /** Names of the known outcomes that it shows, the most telling first; a question has a reason for each. */
  readonly outcomes: readonly string[];
}

/**
 * What a bench does for a question that is answered by setting it. `Task` is what a lesson asks for, in plain data;
 * `Layout` what a visitor sets.
 */
export interface Settable<Task, Layout> {
  /** Every outcome that {@link Settable.grade} can tell. */
  readonly outcomes: readonly string[];
  /** Where the visitor begins, and one layout that meets everything. */
  readonly start: (task: Task) => Layout;
  readonly way: (task: Task) => Layout;
  /** A layout as a short text to be kept, and back; null for a text that is no layout of this task. */
  readonly write: (layout: Layout) => string;
  readonly read: (task: Task, text: string) => Layout | null;
  readonly grade: (task: Task, layout: Layout) => Grade;
  /** The layout in words. */
  readonly words: (task: Task, layout: Layout) => string;
}
