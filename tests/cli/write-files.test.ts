import * as nodeFiles from 'node:fs/promises'
import { expect } from 'vitest'
import { type Files, writeFiles } from '../../src/cli/output/write-files.ts'
import { type Folder, testInFolder } from './call.ts'

const bytes = Buffer.from('new')

/** A file system that fails at the nth call of one of its functions, counted from 1. */
function failingAt(name: 'writeFile' | 'rename', nth: number, code = 'EIO'): Files {
  let calls = 0
  const fails = (called: typeof name): boolean => called === name && ++calls === nth
  const failure = () => Object.assign(new Error(code), { code })
  const writeFile = async (path: string, bytes: Uint8Array, options?: { flag: string }): Promise<void> => {
    const full = fails('writeFile')
    // a disk that fills up leaves a part of the file
    await nodeFiles.writeFile(path, full ? bytes.subarray(0, 2) : bytes, options)
    if (full) throw failure()
  }
  const rename = async (from: string, to: string): Promise<void> => {
    if (fails('rename')) throw failure()
    await nodeFiles.rename(from, to)
  }
  return { ...nodeFiles, writeFile, rename } as Files
}

async function contents(folder: Folder): Promise<Record<string, string>> {
  const names = await folder.names()
  return Object.fromEntries(
    await Promise.all(names.map(async name => [name, await nodeFiles.readFile(folder.in(name), 'utf8')])),
  )
}

for (const { name, times } of [
  { name: 'writeFile', times: 3 },
  // of three files two are old ones, which are put aside first
  { name: 'rename', times: 5 },
] as const) {
  for (let nth = 1; nth <= times; nth++) {
    testInFolder(`when ${name} fails for the ${nth}. time, everything is as it was before`, async folder => {
      await folder.write('b.svg', 'old b')
      await folder.write('c.svg', 'old c')
      const outputs = ['a.svg', 'b.svg', 'c.svg'].map(file => ({ path: folder.in(file), bytes }))
      await expect(writeFiles(outputs, failingAt(name, nth))).rejects.toThrow(/cannot be written \(EIO\)/)
      expect(await contents(folder)).toEqual({ 'b.svg': 'old b', 'c.svg': 'old c' })
    })
  }
}

testInFolder('when a single file cannot be renamed, the old one is as it was', async folder => {
  await folder.write('a.pdf', 'old')
  const outputs = [{ path: folder.in('a.pdf'), bytes }]
  await expect(writeFiles(outputs, failingAt('rename', 1))).rejects.toThrow()
  expect(await contents(folder)).toEqual({ 'a.pdf': 'old' })
})

testInFolder('a full disk is said in words', async folder => {
  const outputs = [{ path: folder.in('a.pdf'), bytes }]
  await expect(writeFiles(outputs, failingAt('writeFile', 1, 'ENOSPC'))).rejects.toThrow(
    `there is no room left to write ${folder.in('a.pdf')}`,
  )
  expect(await folder.names()).toEqual([])
})

testInFolder('new and old files are written together, and nothing else is left', async folder => {
  await folder.write('b.svg', 'old b')
  await writeFiles(['a.svg', 'b.svg'].map(file => ({ path: folder.in(file), bytes })))
  expect(await contents(folder)).toEqual({ 'a.svg': 'new', 'b.svg': 'new' })
})
