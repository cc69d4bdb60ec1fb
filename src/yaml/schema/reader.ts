import { z } from 'zod'
import type { Finding } from '../../finding/finding.ts'
import type { TreeNode } from '../document/tree.ts'
import type { JsonSchema } from './json-schema.ts'

/** A zod type that makes a value of the plan from a node of the tree. */
export type Reader<T> = z.ZodType<T, unknown>

/** Takes a fault. What a reader returns after it is not looked at. */
export type Fail = (finding: Finding) => void

/**
 * A reader from a function, which returns `undefined` where it fails. `wanted` says in words what belongs there, `json` in JSON Schema.
 * Faults ride through zod on its issues, so that they come out together however deep they were found; an issue
 * without one means that the fault is reported elsewhere.
 */
export function reader<T>(
  wanted: string,
  read: (node: TreeNode, fail: Fail) => T | undefined,
  json: JsonSchema,
): Reader<T> {
  return z
    .transform((node: TreeNode | undefined, context) => {
      const fail = (finding?: Finding) =>
        context.issues.push({ code: 'custom', input: undefined, message: wanted, params: { finding } })
      const value = node === undefined ? undefined : read(node, fail)
      if (value === undefined && context.issues.length === 0) fail()
      return value ?? z.NEVER
    })
    .meta({ description: wanted, json })
}

/** Reads a node inside another reader, and hands its faults on. */
export function readWithin<T>(type: z.ZodType<T, unknown>, node: unknown, fail: Fail): T | undefined {
  const result = type.safeParse(node)
  if (result.success) return result.data
  for (const finding of findingsOf(result.error)) fail(finding)
  return undefined
}

/** The faults that a failed reading carries. */
export function findingsOf(error: z.ZodError): readonly Finding[] {
  return error.issues.flatMap(issue =>
    issue.code === 'custom' && issue.params?.finding ? [issue.params.finding as Finding] : [],
  )
}

/** A value that may be left out. */
export function optional<T>(type: Reader<T>): z.ZodExactOptional<Reader<T>> {
  return type.exactOptional()
}
