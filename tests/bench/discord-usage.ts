// Loaded into each measured process: tells its processor time and resident memory when it is asked.
process.on('message', () => {
  const { user, system } = process.cpuUsage();
  const [megabytes] = [process.memoryUsage.rss() / 1024 / 1024];
  process.send?.({ cpu: user + system, megabytes });
});
process.channel?.unref();
