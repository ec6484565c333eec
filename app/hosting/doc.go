// Package hosting holds what servers are told so that they serve the site as
// it wants to be served: nginx.conf for nginx, htaccess for Apache, _headers
// for hosts of plain files that read such a list. The README says where each
// goes. All three send the same headers.
package hosting
