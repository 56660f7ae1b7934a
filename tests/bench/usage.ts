// Loaded into each measured process: tells its processor time and resident memory when it is asked.

export interface Usage {
  /** Microseconds of processor time since the start. */
  readonly cpu: number;
  readonly megabytes: number;
}

process.on('message', (message) => {
  if (message !== 'usage') return;
  const { user, system } = process.cpuUsage();
  const usage: Usage = { cpu: user + system, megabytes: process.memoryUsage.rss() / 1024 / 1024 };
  process.send?.(usage);
});
process.channel?.unref();
