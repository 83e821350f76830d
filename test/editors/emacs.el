;;; What a person does in Emacs: reads a finding, takes its fix, renames a record where a system names it.  -*- lexical-binding: t -*-
(package-initialize)
(require 'lsp-mode)
(require 'json)

(defvar folder (getenv "RECORDS"))
(setq lsp-session-file (expand-file-name "../session" folder)
      lsp-enable-file-watchers nil
      lsp-restart 'ignore
      create-lockfiles nil
      make-backup-files nil)

(define-derived-mode record-mode text-mode "Record")
(add-to-list 'lsp-language-id-configuration '(record-mode . "yaml"))
(load (getenv "SETTINGS"))

(defun wait (what is-so)
  (with-timeout (20 (error "Waited in vain for %s" what))
    (while (not (funcall is-so)) (accept-process-output nil 0.05))))

(defun open-record (name)
  (find-file (expand-file-name name folder))
  (record-mode)
  (lsp)
  (wait "the server" (lambda () (seq-some (lambda (one) (eq 'initialized (lsp--workspace-status one))) (lsp-workspaces)))))

(defun rules ()
  (mapcar #'lsp:diagnostic-code? (gethash (lsp--fix-path-casing buffer-file-name) (lsp-diagnostics))))

(defun place-cursor (text)
  (goto-char (point-min))
  (search-forward text)
  (backward-char))

(defun session ()
  (lsp-workspace-folders-add folder)
  (open-record "tern.panel.yaml")
  (wait "findings" (lambda () (member "voc-below-vmp" (rules))))
  (let ((findings (rules)))
    (place-cursor "2.21 V")
    (lsp-execute-code-action
     (seq-find (lambda (action) (string-match-p "22\\.1 V" (lsp:code-action-title action))) (lsp-code-actions-at-point)))
    (wait "the finding to go" (lambda () (not (member "voc-below-vmp" (rules)))))
    (save-buffer)
    (open-record "boat.system.yaml")
    (place-cursor "tern")
    (lsp-rename "gull")
    (wait "the file" (lambda () (file-exists-p (expand-file-name "gull.panel.yaml" folder))))
    (save-some-buffers t)
    `((findings . ,(vconcat findings)))))

(let ((seen (condition-case problem (session) (error `((problem . ,(error-message-string problem)))))))
  (with-temp-file (getenv "REPORT") (insert (json-encode seen))))
(kill-emacs)
