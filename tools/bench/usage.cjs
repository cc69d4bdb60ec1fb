// Loaded into a measured process: writes on its way out what it used, memory in bytes and time in milliseconds.
const { writeFileSync } = require('node:fs')

process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage()
  const usage = { memory: maxRSS * 1024, cpu: (userCPUTime + systemCPUTime) / 1000 }
  writeFileSync(process.env.BENCH_USAGE, JSON.stringify(usage))
})
