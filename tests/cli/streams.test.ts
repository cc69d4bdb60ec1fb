import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { readFile } from 'node:fs/promises'
import { expect } from 'vitest'
import { builtCommand } from './built-command.ts'
import { demoPlan, soundPlan, testInFolder } from './call.ts'

testInFolder(
  '- reads the plan from standard input, and then the PDF goes to standard output',
  async folder => {
    const { code, stdout, err } = await folder.call(['print', '-'], { stdin: soundPlan })
    expect({ code, err }).toEqual({ code: 0, err: 'nothing found\n' })
    expect(stdout.subarray(0, 8).toString()).toBe('%PDF-1.7')
    expect(await folder.names()).toEqual([])
  },
)

testInFolder(
  '-o - writes the same bytes to standard output that -o FILE writes to the file',
  async folder => {
    await folder.write('rack.yaml', soundPlan)
    const { code, stdout } = await folder.call(['print', 'rack.yaml', '-o', '-'])
    expect(code).toBe(0)
    await folder.call(['print', 'rack.yaml', '-o', 'rack.pdf'])
    expect(stdout.equals(await readFile(folder.in('rack.pdf')))).toBe(true)
  },
)

testInFolder('a plan from standard input may be printed into a file and a folder', async folder => {
  expect((await folder.call(['print', '-', '-o', 'a.pdf'], { stdin: soundPlan })).code).toBe(0)
  expect((await folder.call(['svg', '-', '-o', 'a'], { stdin: soundPlan })).code).toBe(0)
  expect(await folder.names()).toEqual(['a', 'a.pdf'])
})

testInFolder('who reads the report may stop before its end', async folder => {
  const child = spawn(process.execPath, [builtCommand, 'check', '--json', demoPlan], { cwd: folder.path })
  child.stdout.destroy()
  let said = ''
  child.stderr.on('data', chunk => {
    said += chunk
  })
  const [code] = await once(child, 'close')
  expect({ code, said }).toEqual({ code: 1, said: '' })
})

testInFolder('no colours go into a pipe, whatever the environment asks for', async folder => {
  const { out } = await folder.call(['check', demoPlan], {
    env: { FORCE_COLOR: '1', TERM: 'xterm-256color' },
  })
  expect(out).not.toContain('\u001b')
})
