-- Drillwright in Neovim, 0.7 or later: put these lines into init.lua. Each school has one server, started with its first file.
local servers = {}

vim.api.nvim_create_autocmd({ 'BufReadPost', 'BufNewFile' }, {
  pattern = { '*.yaml', '*.yml' },
  callback = function(event)
    local folder = vim.fn.fnamemodify(event.file, ':p:h')
    local settings = vim.fn.findfile('school.yaml', folder .. ';')
    if settings == '' then
      return
    end
    local root = vim.fn.fnamemodify(settings, ':p:h')
    servers[root] = servers[root]
      or vim.lsp.start_client({ name = 'drillwright', cmd = { 'drillwright', 'language-server' }, root_dir = root })
    vim.lsp.buf_attach_client(event.buf, servers[root])
    vim.bo[event.buf].omnifunc = 'v:lua.vim.lsp.omnifunc' -- offers: Ctrl-X Ctrl-O
    for keys, action in pairs({
      K = vim.lsp.buf.hover,
      gd = vim.lsp.buf.definition,
      gO = vim.lsp.buf.document_symbol,
      gra = vim.lsp.buf.code_action,
      grn = vim.lsp.buf.rename,
      grr = vim.lsp.buf.references,
      grf = vim.lsp.buf.format or vim.lsp.buf.formatting,
    }) do
      vim.keymap.set('n', keys, action, { buffer = event.buf })
    end
  end,
})
