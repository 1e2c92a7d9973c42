-- What an author has of the language server, tried in Neovim: findings, hover, offers, a fix, a new name.
-- usage: nvim --headless -n -u render-pdf/docs/editors/neovim.lua FILE -c 'luafile .ci/edited.lua'
local patience = 60000

local function demand(what, holds)
  if not holds then
    io.stderr:write('edited: ' .. what .. '\n')
    vim.cmd('cquit')
  end
end

local function findings()
  return vim.tbl_map(function(one)
    return one.code or vim.tbl_get(one, 'user_data', 'lsp', 'code')
  end, vim.diagnostic.get(0))
end

local function wait(what, holds)
  demand(what, vim.wait(patience, holds, 50))
end

local function ask(method, params)
  local answers = vim.lsp.buf_request_sync(0, method, params or vim.lsp.util.make_position_params(), patience)
  for _, answer in pairs(answers or {}) do
    demand(method .. ' is refused', not answer.error)
    return answer.result
  end
  demand(method .. ' is not answered', false)
end

wait('no server is there', function()
  local _, server = next(vim.lsp.buf_get_clients(0))
  return server and server.initialized
end)

-- Octave does not close the line in which the attack arrives.
vim.fn.search('Parry quarte in')
vim.cmd('normal! wcwoctave')
wait('a slip is not found', function()
  return vim.tbl_contains(findings(), 'parry-misses')
end)
demand('it is not said how the turn was read', vim.inspect(ask('textDocument/hover')):find('Parry octave in the lunge'))

local range = vim.lsp.util.make_range_params()
range.context = { diagnostics = {} }
local action = ask('textDocument/codeAction', range)[1]
demand('no fix is offered', action and action.title == "Change to 'Parry quarte in the lunge.'")
vim.lsp.util.apply_workspace_edit(action.edit, 'utf-16')
wait('the fix mends nothing', function()
  return #findings() == 0
end)

vim.fn.search('follower: Riposte')
vim.cmd('normal! f:lD')
local behind = vim.lsp.util.make_position_params()
behind.position.character = #vim.fn.getline('.')
local turns = vim.tbl_map(function(item)
  return item.label
end, ask('textDocument/completion', behind))
demand('the riposte is not offered', vim.tbl_contains(turns, 'Riposte straight to the high inside line.'))
vim.cmd('normal! u')

demand('the outline lacks its counts', #ask('textDocument/documentSymbol', { textDocument = vim.lsp.util.make_text_document_params() }) == 7)

local name = vim.lsp.util.make_position_params()
name.position = { line = 0, character = 8 }
name.newName = 'with-another-name'
vim.lsp.util.apply_workspace_edit(ask('textDocument/rename', name), 'utf-16')
vim.cmd('silent wall')
demand('the file has its old name', vim.fn.expand('%:t') == 'with-another-name.yaml' and vim.fn.filereadable(vim.fn.expand('%')) == 1)

vim.cmd('qall!')
