import type { YamlFacts } from '../reading-facts.ts'
import { quoted } from '../visible.ts'
import type { Sentences } from './wording.ts'

export const yamlSentences: Sentences<keyof YamlFacts> = {
  'not-yaml': ({ facts }) => `this does not read: ${quoted(facts.found)}; wanted: ${facts.wanted}`,
  'colon-without-space': ({ facts }) =>
    `a colon wants a space behind it; write ${quoted(`${facts.key}: ${facts.value}`)}`,
  'colon-in-text': ({ facts }) =>
    `a colon and a space inside a text begin a new key; put quotes around it: ${quoted(facts.text)}`,
  'comment-eats-value': ({ facts }) =>
    `a # begins a comment, so ${quoted(facts.key)} has no value; put quotes around it: ${quoted(facts.comment)}`,
  'comment-in-text': ({ facts }) =>
    `${quoted(facts.comment)} is read as a comment; if it belongs to the value, put quotes around both: ${quoted(`${facts.value} ${facts.comment}`)}`,
  'comma-in-braces': ({ facts }) => {
    const ended = `a comma inside { } ends the value of ${quoted(facts.before)}`
    return /^\d+$/.test(facts.found)
      ? `${ended}; decimals have a point`
      : `${ended}, and ${quoted(facts.found)} has no colon; put quotes around a text with a comma in it, or give ${quoted(facts.found)} a value`
  },
  'bare-tilde': ({ facts }) =>
    `a ~ alone means nothing at all; write the size behind it, ${quoted(`${facts.key}: ~ 3/8`)}, or unknown`,
  'tab-indent': () => 'a tab stands here; indent with spaces',
  'tag-refused': ({ facts }) =>
    `tags are not read (${quoted(facts.tag)}); put quotes around a text that begins with !`,
  'merge-key': () => 'merge keys (<<) are not read; write the keys out',
  'alias-unknown': ({ facts }) =>
    `${quoted(`*${facts.name}`)} stands for nothing; put quotes around a text that begins with *`,
  'alias-loop': ({ facts }) => `${quoted(`*${facts.name}`)} stands inside what it stands for`,
  'second-document': () => 'a second document begins here; a file holds one',
  'yaml-version': ({ facts }) =>
    `the file says YAML ${quoted(facts.found)}; only YAML 1.2 is read, leave the line out`,
}
