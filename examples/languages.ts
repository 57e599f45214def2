const element = document.querySelector('elv-load-schedule')!;
document.querySelector('#language')!.addEventListener('change', ({ currentTarget }) => {
  element.lang = (currentTarget as HTMLSelectElement).value;
});

export {};
