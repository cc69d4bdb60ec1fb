/**
 * Why an operation of the kernel could not be carried out. `operation` and `input` together are a case that
 * can be run again; `facts` says where and what, in millimetres and segment numbers.
 */
export type Fault = {
  readonly operation: string
  readonly reason: string
  readonly facts: Readonly<Record<string, number | string>>
  readonly input: unknown
}

/** A result, or the reason why there is none. The kernel does not throw on what it was given. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: Fault }

/** The outcome of an operation that was carried out. */
export function success<T>(value: T): Outcome<T> {
  return { ok: true, value }
}

/** The outcome of an operation that could not be carried out. */
export function failure(fault: Fault): { readonly ok: false; readonly fault: Fault } {
  return { ok: false, fault }
}
