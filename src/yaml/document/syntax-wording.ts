import type { ErrorCode, YAMLError } from 'yaml'

/** What would have been YAML, for each kind of syntax error. */
const wanted: Record<ErrorCode, string> = {
  ALIAS_PROPS: 'a *name alone',
  BAD_ALIAS: 'a name directly behind the * or &; a text that begins with one of them stands in quotes',
  BAD_COLLECTION_TYPE: 'no tag',
  BAD_DIRECTIVE: 'no line that begins with %',
  BAD_DQ_ESCAPE: 'single quotes around a text with a backslash in it',
  BAD_INDENT: 'the entries of one list or group to begin in the same column',
  BAD_PROP_ORDER: 'the & name or ! tag behind the indicator',
  BAD_SCALAR_START: 'quotes around a text that begins with this character',
  BLOCK_AS_IMPLICIT_KEY: 'one key and value a line, the lines of a group beginning in the same column',
  BLOCK_IN_FLOW: 'commas between the entries of { } and [ ]',
  DUPLICATE_KEY: 'each key once',
  IMPOSSIBLE: 'key: value',
  KEY_OVER_1024_CHARS: 'a shorter key',
  MISSING_CHAR: 'key: value',
  MULTILINE_IMPLICIT_KEY: 'key: value on one line, with a colon and a space behind the key',
  MULTIPLE_ANCHORS: 'at most one & name',
  MULTIPLE_DOCS: 'one document in a file',
  MULTIPLE_TAGS: 'no tag',
  NON_STRING_KEY: 'a word as key',
  RESOURCE_EXHAUSTION: 'less nesting',
  TAB_AS_INDENT: 'spaces',
  TAG_RESOLVE_FAILED: 'no tag',
  UNEXPECTED_TOKEN: 'one value and nothing behind it',
}

/** What ended the value too early, by the character before the one that was not expected. */
const afterEarlyEnd: Readonly<Record<string, string>> = {
  '"': 'nothing behind the closing quotation mark; a text with " in it stands in single quotes',
  "'": "nothing behind the closing quotation mark; inside single quotes a ' is written twice",
  ']': 'quotes around a text that begins with a bracket',
  '}': 'quotes around a text that begins with a bracket',
  '>': 'quotes around a text that begins with >',
  '|': 'quotes around a text that begins with |',
}

/** What was wanted in place of what the YAML reader stumbled over; `before` is the text in front of it. */
export function wantedFor({ code, message }: YAMLError, before: string): string {
  const early = afterEarlyEnd[before.trimEnd().slice(-1)]
  if (code === 'UNEXPECTED_TOKEN' && early !== undefined) return early
  if (message.includes('end with a'))
    return 'this bracket to be closed, and the lines inside it to be indented'
  if (code === 'MISSING_CHAR') {
    if (message.startsWith('Missing closing')) return 'the quotation mark again at the end of the text'
    if (message.startsWith('Comments must')) return 'a space before the #'
    if (message.includes('items')) return 'a comma between the entries of { } and [ ]'
    if (message.includes('indicator')) return 'the entries of a list to begin with - and a space'
  }
  return wanted[code]
}
