/** What went wrong with something a person wrote, said so that it can stand beside the field. */
export interface Fault {
  /** One clear sentence, without the typed text's markup. */
  message: string;
  /** Zero-based index of the first character that could not be used, where one is to blame. */
  at?: number;
}

/** A value that was read, or what kept it from being read. */
export type Result<T> = { ok: true; value: T } | { ok: false; fault: Fault };

/** A result that worked. */
export const ok = <T>(value: T): Result<T> => ({ ok: true, value });

/** One that did not: a sentence about what is wrong, and the index in the text, if it is at one place. */
export const fail = (message: string, at?: number): Result<never> => ({
  ok: false,
  fault: at === undefined ? { message } : { message, at },
});
