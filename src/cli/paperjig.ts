#!/usr/bin/env node
import process from 'node:process'
import { optimiseLater } from './optimise-later.ts'
import { run } from './run.ts'

optimiseLater()

// who reads our output may stop before the end, as `head` does; that is no fault
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
  })
}

process.exitCode = await run(process.argv.slice(2), process)
