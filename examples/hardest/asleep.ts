document.querySelector('#wake')!.addEventListener('click', () => {
  document.querySelector('#inert')!.toggleAttribute('inert');
});
