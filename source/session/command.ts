/** What a maker can do to a session. Accepted commands are what the log records, one line each. */
export type Command =
  | { readonly do: 'confirm'; readonly count: number }
  | { readonly do: 'take-back' }
  | { readonly do: 'redo' }
  /** Go to where `done` steps are confirmed, whatever lies between. */
  | { readonly do: 'jump'; readonly done: number }
  | { readonly do: 'note'; readonly text: string }
  | { readonly do: 'mark'; readonly name: string };

export type SessionFault =
  | { readonly code: 'session/nothing-to-confirm' }
  | { readonly code: 'session/too-many-steps'; readonly count: number; readonly left: number }
  | { readonly code: 'session/nothing-to-take-back' }
  | { readonly code: 'session/nothing-to-redo' }
  | { readonly code: 'session/no-such-step'; readonly step: number; readonly stepCount: number }
  | { readonly code: 'session/already-there'; readonly done: number }
  | { readonly code: 'session/nothing-to-say'; readonly what: 'note' | 'mark' };
