/** Bytes of a page of memory on the machines that Node runs on. */
const pageSize = 4096
const pages = 65_536

/** What the system takes to hand out a page of memory, in ms of processor time: some ten times as much under some virtual machines. */
export function costOfPage(): number {
  const tries = Array.from({ length: 3 }, () => {
    const before = process.resourceUsage()
    const from = process.cpuUsage()
    const fresh = new Uint8Array(pages * pageSize)
    for (let at = 0; at < fresh.length; at += pageSize) fresh[at] = 1
    const { user, system } = process.cpuUsage(from)
    return (
      (user + system) / 1000 / Math.max(1, process.resourceUsage().minorPageFault - before.minorPageFault)
    )
  })
  return Math.min(...tries)
}
