-- What a person does in Neovim: reads a finding, takes its fix, renames a record where a system names it.
local folder, report = vim.env.RECORDS, vim.env.REPORT
local seen = {}

local function wait(what, is_so)
  if not vim.wait(20000, is_so, 50) then error('waited in vain for ' .. what) end
end

vim.cmd('cd ' .. folder)
vim.cmd('filetype on')
vim.cmd('luafile ' .. vim.env.SETTINGS)

local function open(name)
  vim.cmd('edit ' .. folder .. '/' .. name)
  wait('the server', function() return #vim.lsp.buf_get_clients(0) > 0 end)
end

local function place_cursor(text)
  vim.fn.cursor(1, 1)
  vim.fn.search(text)
end

local function rules()
  return vim.tbl_map(function(one) return one.code or one.user_data.lsp.code end, vim.diagnostic.get(0))
end

local function session()
  open('tern.panel.yaml')
  wait('findings', function() return vim.tbl_contains(rules(), 'voc-below-vmp') end)
  seen.findings = rules()

  place_cursor('2.21 V')
  vim.ui.select = function(actions, _, choose)
    for _, action in ipairs(actions) do
      if action[2].title:find('22.1 V', 1, true) then choose(action) end
    end
  end
  vim.lsp.buf.code_action()
  wait('the fix', function() return vim.fn.search('22.1 V', 'nw') > 0 end)
  wait('the finding to go', function() return not vim.tbl_contains(rules(), 'voc-below-vmp') end)
  vim.cmd('write')

  open('boat.system.yaml')
  place_cursor('tern')
  vim.lsp.buf.rename('gull')
  wait('the file', function() return vim.fn.filereadable(folder .. '/gull.panel.yaml') == 1 end)
  wait('the id', function() return vim.fn.search('gull', 'nw') > 0 end)
  vim.cmd('wall')
end

local fine, problem = pcall(session)
seen.problem = not fine and problem or nil
vim.fn.writefile({ vim.fn.json_encode(seen) }, report)
vim.cmd('qall!')
