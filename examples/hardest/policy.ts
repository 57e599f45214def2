const reports = document.querySelector<HTMLOutputElement>('#reports')!;
document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) => {
  reports.value = String(parseInt(reports.value, 10) + 1);
  const line = document.createElement('p');
  line.textContent = `${violatedDirective}: ${blockedURI} ${sample}`;
  reports.parentElement!.after(line);
});
