const fields = new URLSearchParams(location.search);
const text = fields.get('schedule') ?? '';
document.querySelector<HTMLOutputElement>('#job')!.value = fields.get('job') ?? 'none';
document.querySelector<HTMLOutputElement>('#size')!.value = String(text.length);
if (text !== '') document.querySelector('elv-load-schedule')!.value = text;
